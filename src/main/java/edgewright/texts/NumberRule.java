package edgewright.texts;

import java.util.Locale;

/**
 * How a language writes numbers.
 *
 * @param decimalSign what stands before the fraction
 * @param groupSign what stands between groups of three digits of an amount; empty for none
 * @param groupFromDigits the fewest digits of an amount that is grouped
 */
record NumberRule(String decimalSign, String groupSign, int groupFromDigits) {
    private static final int GROUP = 3;

    String count(long amount) {
        String written = Long.toString(amount);
        int digits = amount < 0 ? written.length() - 1 : written.length();
        if (digits < groupFromDigits) {
            return written;
        }
        StringBuilder grouped = new StringBuilder(written);
        for (int at = written.length() - GROUP; at > written.length() - digits; at -= GROUP) {
            grouped.insert(at, groupSign);
        }
        return grouped.toString();
    }

    String decimal(double number, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", number).replace(".", decimalSign);
    }

    String shortest(double number, int mostDigits) {
        String fixed = String.format(Locale.ROOT, "%." + mostDigits + "f", number);
        int end = fixed.length();
        if (fixed.indexOf('.') >= 0) {
            while (fixed.charAt(end - 1) == '0') {
                end--;
            }
            if (fixed.charAt(end - 1) == '.') {
                end--;
            }
        }
        return fixed.substring(0, end).replace(".", decimalSign);
    }
}
