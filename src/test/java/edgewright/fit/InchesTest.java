package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.texts.English;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InchesTest {
    /** 10 cm are usually given as 4 inches: the Craft Yarn Council's table of yarn weights has 'sc per 4 in (10 cm)'. */
    @ParameterizedTest
    @CsvSource({"0, 0", "3.1, 0", "3.2, \u00bc", "12.7, \u00bd", "25.4, 1", "95, 3\u00be", "100, 4", "1000, 39\u00bc"})
    void aLengthIsGivenToTheNearestQuarter(double mm, String inches) {
        assertThat(new Inches(English.LANGUAGE).ofMm(mm)).isEqualTo(inches);
    }
}
