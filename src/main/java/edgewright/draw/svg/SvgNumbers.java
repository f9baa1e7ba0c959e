package edgewright.draw.svg;

/** Lengths for SVG: whole micrometres, written as millimetres and as short as its grammar allows. */
final class SvgNumbers {
    private static final int IN_A_MM = 1000;

    private SvgNumbers() {}

    /** A length in whole micrometres; what comes out of sums as nearly a half is rounded as a half. */
    static long micrometres(double millimetres) {
        return Math.round(Math.rint(millimetres * IN_A_MM * IN_A_MM) / IN_A_MM);
    }

    /** A length as {@link #of}, rounded to whole micrometres. */
    static String mm(double millimetres) {
        return of(micrometres(millimetres));
    }

    /** A length in millimetres, without zeros that say nothing; {@code -.25} for a quarter to the left. */
    static String of(long micrometres) {
        long size = Math.abs(micrometres);
        StringBuilder text = new StringBuilder(micrometres < 0 ? "-" : "");
        if (size >= IN_A_MM || size == 0) {
            text.append(size / IN_A_MM);
        }
        long part = size % IN_A_MM;
        if (part > 0) {
            String digits = Long.toString(IN_A_MM + part).substring(1);
            text.append('.').append(digits.replaceFirst("0+$", ""));
        }
        return text.toString();
    }

    /** Two lengths after one another; a minus sign parts them too. */
    static String pair(long xMicrometres, long yMicrometres) {
        return of(xMicrometres) + (yMicrometres < 0 ? "" : " ") + of(yMicrometres);
    }
}
