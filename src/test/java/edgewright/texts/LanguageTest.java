package edgewright.texts;

import static edgewright.texts.Arg.and;
import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.choice;
import static edgewright.texts.Arg.commas;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.decimal;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.or;
import static edgewright.texts.Arg.shortest;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** The mechanism of texts, in English and in a language that consists of resources of the tests alone. */
class LanguageTest {
    private static final Language INVENTED = Language.of("art-x-marsh");
    private static final Messages MARSH = INVENTED.messages("marsh");

    private enum Way {
        UP,
        DOWN
    }

    @Test
    void anAmountIsGroupedAsTheLanguageGroupsAndAnIdentifierNever() {
        assertThat(LongStream.of(0, 999, 1201, 9999, 10_000, 1_234_567, -12_345).mapToObj(English.LANGUAGE::count))
                .containsExactly("0", "999", "1201", "9999", "10,000", "1,234,567", "-12,345");
        assertThat(LongStream.of(0, 999, 1201, -1201, 1_234_567).mapToObj(INVENTED::count))
                .containsExactly("0", "999", "1\u00a0201", "-1\u00a0201", "1\u00a0234\u00a0567");
        assertThat(MARSH.text("filled", arg("yarn", "A"), number("round", 123_456)))
                .isEqualTo("A ötar 123456");
        assertThat(MARSH.text("filled", arg("yarn", "A"), count("round", 123_456)))
                .isEqualTo("A ötar 123\u00a0456");
    }

    @Test
    void aMeasureHasTheDecimalSignOfTheLanguageAndIsNotGrouped() {
        assertThat(List.of(
                        English.LANGUAGE.decimal(12_345.25, 1),
                        English.LANGUAGE.decimal(2, 0),
                        English.LANGUAGE.shortest(4.50, 2),
                        English.LANGUAGE.shortest(10, 2),
                        English.LANGUAGE.shortest(100, 0),
                        INVENTED.decimal(0.75, 1),
                        INVENTED.shortest(-4.5, 2)))
                .containsExactly("12345.3", "2", "4.5", "10", "100", "0,8", "-4,5");
        assertThat(MARSH.text("filled", decimal("yarn", 1.5, 2), shortest("round", 1.5, 2)))
                .isEqualTo("1,50 ötar 1,5");
    }

    @Test
    void aListIsJoinedAsTheLanguageJoins() {
        assertThat(lists(English.LANGUAGE)).containsExactly("", "1", "1 and 2", "1, 2 and 3", "1, 2 or 3", "1, 2, 3");
        assertThat(lists(INVENTED)).containsExactly("", "1", "1; še 2", "1; 2; še 3", "1; 2 älle 3", "1; 2; 3");
        List<Integer> parts = List.of(1, 2);
        assertThat(MARSH.text("filled", and("yarn", parts), or("round", parts))).isEqualTo("1; še 2 ötar 1 älle 2");
        assertThat(MARSH.text("filled", commas("yarn", parts), arg("round", "")))
                .isEqualTo("1; 2 ötar ");
    }

    private static List<String> lists(Language language) {
        List<Integer> three = List.of(1, 2, 3);
        return List.of(
                language.and(List.of()),
                language.and(List.of(1)),
                language.and(List.of(1, 2)),
                language.and(three),
                language.or(three),
                language.commas(three));
    }

    @Test
    void aMessageChoosesItsWordsByTheVeryNumberElseByThePluralOfTheLanguage() {
        assertThat(LongStream.of(0, 1, 2, 5, 11, 12, 21, 22, 101, 1_002, 1_000_000)
                        .mapToObj(n -> MARSH.text("stitches", count("stitches", n))))
                .containsExactly(
                        "nül mäsk",
                        "1 mäsk",
                        "2 mäski",
                        "5 mäskor",
                        "11 mäskor",
                        "12 mäskor",
                        "21 mäsk",
                        "22 mäski",
                        "101 mäsk",
                        "1\u00a0002 mäski",
                        "1\u00a0000\u00a0000 mäskor");
        assertThat(LongStream.of(0, 1, 2, 11, -1).mapToObj(English.LANGUAGE::plural))
                .containsExactly("other", "one", "other", "other", "one");
        assertThat(LongStream.of(1, 11, 4, 14, 1_000_000).mapToObj(INVENTED::plural))
                .containsExactly("one", "other", "few", "other", "many");
    }

    @Test
    void aMessageChoosesItsWordsByACase() {
        assertThat(List.of(MARSH.text("way", choice("way", Way.UP)), MARSH.text("way", choice("way", Way.DOWN))))
                .containsExactly("ylös", "alas");
    }

    @Test
    void aTextStandsAsItIsButForATildeWhichIsABlankThatHoldsTheLine() {
        assertThat(List.of(
                        MARSH.text("plain"),
                        MARSH.text("two-lines"),
                        MARSH.text("spaced"),
                        MARSH.text("by-maker"),
                        MARSH.text("filled", arg("yarn", "the maker's {$round} $1"), number("round", 2))))
                .containsExactly(
                        "tilde\u00a0stands for a blank",
                        "first line\nsecond line",
                        "  a{b}",
                        "vävare: tilde\u00a0stands for a blank",
                        "the maker's {$round} $1 ötar 2");
    }

    @Test
    void aDialectIsAFolderInsideTheLanguage() {
        assertThat(INVENTED.messages("south/marsh").text("plain")).isEqualTo("södra");
    }

    @Test
    void wordsInADialectHaveTheTagThatTheLanguageGivesThem() {
        assertThat(List.of(English.LANGUAGE.dialectTag("UK"), English.LANGUAGE.dialectTag("US")))
                .containsExactly("en-GB", "en-US");
        assertThatThrownBy(() -> English.LANGUAGE.dialectTag("SALTMARSH")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aQuotationAndACapitalAreThoseOfTheLanguage() {
        assertThat(List.of(INVENTED.quoted("öt"), INVENTED.capital("öt"), English.LANGUAGE.quoted("a")))
                .containsExactly("»öt«", "Öt", "'a'");
        assertThat(List.of(
                        English.LANGUAGE.capital(""),
                        English.LANGUAGE.capital("left side"),
                        English.LANGUAGE.capital("2 rounds")))
                .containsExactly("", "Left side", "2 rounds");
    }

    @Test
    void theLanguageOfTheMachineChangesNothing() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(List.of(
                            English.LANGUAGE.decimal(1.5, 1),
                            English.LANGUAGE.count(12_345),
                            MARSH.text("stitches", count("stitches", 5))))
                    .containsExactly("1.5", "12,345", "5 mäskor");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aMistakeInAMessageOrAMissingValueIsNamedWithItsFile() {
        String file = "edgewright/language/art-x-marsh/marsh.ftl";
        assertThatThrownBy(() -> MARSH.text("filled", arg("yarn", "A")))
                .hasMessage(file + ", message filled: the value $round is missing");
        assertThatThrownBy(() -> MARSH.text("absent")).hasMessage(file + " has no message absent");
        assertThatThrownBy(() -> MARSH.text("round-about"))
                .hasMessage(file + ", message round-about: refers to itself");
        assertThatThrownBy(() -> MARSH.text("called", count("stitches", 1)))
                .hasMessageStartingWith(file + ", message called: no way to fill in");
        assertThatThrownBy(() -> INVENTED.messages("absent"))
                .hasMessage("no such messages: edgewright/language/art-x-marsh/absent.ftl");
        assertThatThrownBy(() -> Language.of("xx")).hasMessage("no such messages: edgewright/language/xx/language.ftl");
        assertThatThrownBy(() -> Language.of("../en")).hasMessage("no tag of a language: ../en");
    }

    @Test
    void manyThreadsReadTheSameMessages() {
        Language fresh = Language.of("art-x-marsh");
        assertThat(IntStream.range(0, 1000)
                        .parallel()
                        .mapToObj(i -> fresh.messages("marsh").text("stitches", count("stitches", 5)))
                        .distinct())
                .containsExactly("5 mäskor");
    }

    @Test
    void besideTermsOfAnotherLandEverydayWordsAreSpelledAsThere() {
        Language american = English.LANGUAGE.spelledAs("US");
        assertThat(american.dialectTag("US")).isEqualTo("en-US");
        assertThat(american.spelledAs("US")).isSameAs(american);
        assertThat(English.LANGUAGE.spelledAs("UK")).isSameAs(English.LANGUAGE).isNotEqualTo(american);
        assertThat(INVENTED.spelledAs("US")).isSameAs(INVENTED);
        Messages yarn = american.messages("yarn");
        assertThat(yarn.text("contrast-nearest", arg("yarn", "Grey colour"), arg("colour", "#808080")))
                .isEqualTo(
                        "The nearest color for Grey colour that can be told apart from all that it meets is #808080.");
        assertThat(yarn.keys()).isEqualTo(English.LANGUAGE.messages("yarn").keys());
    }

    @Test
    void whatNamesAValueAMessageOrAVariantKeepsItsSpelling() {
        assertThat(Respelling.of("colour: color | grey: gray")
                        .respelled(
                                "= Colour { $colour -> [grey] grey *[other] colours, { grey-word } a-grey greyish }"))
                .isEqualTo("= Color { $colour -> [grey] gray *[other] colors, { grey-word } a-grey greyish }");
        assertThatThrownBy(() -> Respelling.of("colour: color | colour: tint"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Respelling.of("colour")).isInstanceOf(IllegalArgumentException.class);
    }
}
