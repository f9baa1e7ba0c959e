package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntUnaryOperator;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Puts other numbers into words that are right, one at a time. */
final class WrongNumbers {
    private final Pattern number;
    private final IntUnaryOperator other;

    /**
     * @param number which numbers are spoilt
     * @param other what stands for a number then; less than 0 is written as 0
     */
    WrongNumbers(String number, IntUnaryOperator other) {
        this.number = Pattern.compile(number);
        this.other = other;
    }

    /**
     * Asserts of each number between two places of the text that the words do not agree without it.
     *
     * @return how many there are
     */
    int assertNonePasses(String text, int begin, int end, Predicate<String> agrees) {
        int spoilt = 0;
        for (MatchResult found : number.matcher(text).results().toList()) {
            if (found.start() > begin && found.end() < end) {
                int wrong = Math.max(0, other.applyAsInt(Integer.parseInt(found.group())));
                String words = text.substring(0, found.start()) + wrong + text.substring(found.end());
                assertThat(agrees.test(words))
                        .as("%s instead of %s in%n%s", wrong, found.group(), words)
                        .isFalse();
                spoilt++;
            }
        }
        return spoilt;
    }
}
