package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import edgewright.cli.CommandLineHelper.Ended;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of arguments that make no command, in full. */
class UsageTest {
    private static final String COMMANDS =
            "check, write, publish, work, fit, draw, yarn, from-picture, surround, corners, letter, vary, help";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "check | found no CHART; expected one",
                "draw x | found no --to FILE; expected one",
                "draw | found no CHART, no --to FILE; expected one of each",
                "write x --at-round 2 | found no --counts N,N,N,N; expected one",
                "write x --at-round --counts 1,2 | --at-round: found '--counts' after it, expected R",
                "write x --counts 1,2 --at-round | --at-round: found nothing after it, expected R",
                "draw x --to | --to: found nothing after it, expected FILE",
                "draw x --to --view border | --to: found '--view' after it, expected FILE",
                "draw x --to= | --to: found '', expected the name of a file",
                "check --sides | --sides: found nothing after it, expected N,N,N,N",
                "from-picture x | found no --to CHART; expected one",
                "corners x | found no --to FOLDER; expected one",
                "surround x | found no OUTER, no --to CHART; expected one of each",
                "work | found no CHART, no --from TEXTFILE; expected a chart, or a pattern in words",
                "work sample-charts/tide-steps.border.json | found no size to work, expected --sides or --repeats, or a piece with --at-round and --counts",
                "yarn sample-charts/reed-bank.border.json | found no size on which all sides come out even, expected --sides or --repeats to count yarn for",
                "fit x | found no --at-round R, no --counts N,N,N,N; expected both: the round in which the piece was counted, and the counts"
            })
    void whatIsMissingIsNamed(String line, String said) {
        assertSaid(line, said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "check --jsn x | found '--jsn', expected one of the options --help, --json, --sides, --version",
                "check --jsn=1 x | found '--jsn=1', expected one of the options --help, --json, --sides, --version",
                "write x y | found 'y' after CHART, expected nothing more but options",
                "yarn x -- --y | found '--y' after CHART, expected nothing more but options",
            })
    void whatIsTooMuchIsNamed(String line, String said) {
        assertSaid(line, said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "fit x --at-round one --counts 1,2 | --at-round: found 'one', expected a whole number",
                "fit x --at-round 99999999999 --counts 1,2 | --at-round: found '99999999999', expected a whole number of at most 2,147,483,647",
                "fit x --at-round 1 --counts 1,2,3 | --counts: found '1,2,3', expected four whole numbers from 0 to 1,000,000 (top, left, bottom, right), or two",
                "check --sides 1,-2 x | --sides: found '1,-2', expected four whole numbers from 0 to 1,000,000 (top, left, bottom, right), or two",
                "draw x --to y.png --dpi 3 | --dpi: found '3', expected a number from 10 to 2400",
                "write --terms CA x | --terms: found 'CA', expected one of UK, US, both",
                "publish x --to y.pdf --leave-out guide,moon | --leave-out: found 'moon', expected one of cover, contents, introduction, facts, chart, words, techniques, counts, finishing, sections, proof, guide, worksheet, sizes, yarn",
                "from-picture x --to y.border.json --crop 1,2,3 | --crop: found '1,2,3', expected four whole numbers: left, top, width and height in pixels",
                "from-picture x --to y.border.json --first top | --first: found 'top', expected one of left, right",
                "from-picture x --to y.border.json --from-corner 2000 | --from-corner: found 2000, expected 0 to 1999",
                "corners x --to y --count 0 | --count: found 0, expected 1 to 100",
                "check --json=yes x | --json: found 'yes' after it, expected no value"
            })
    void aValueThatWillNotDoIsQuoted(String line, String said) {
        assertSaid(line, said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "write x --sides 1,1 --repeats 1,1 | --sides, --repeats: found together, expected one of them",
                "fit x --at-round 1 --counts 1,2 --untie both --target=3,4 | --untie, --target: found together, expected one of them",
                "fit x --at-round 1 --counts 1,2 --any-size | --any-size: found with --at-round and --counts, expected one of them: a piece that was counted has a size",
                "work x --to y.border.json | --to: found with a CHART, expected it only without one, where a chart is drawn from words",
                "draw x --to x.svg --to y.svg | --to: found more than once, expected it once",
                "draw x --to x.svg --draft --draft | --draft: found more than once, expected it once",
                "write x --sides 1,1 --sides 2,2 | --sides: found more than once, expected it once"
            })
    void optionsThatDoNotGoTogetherAreNamed(String line, String said) {
        assertSaid(line, said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "draw x --to y.svg --repeats 4,3 | --repeats: found for a picture of one corner or side, which has no size; expected it with --view border",
                "draw x --to y.svg --sides 4,3 --view corner | --sides: found for a picture of one corner or side, which has no size; expected it with --view border",
                "draw x --to y.png --turn 90 --view border | --turn: found for a picture of a side or a whole border, which is not rotated; expected it with --view corner",
                "draw x --to Y.SVG --dpi 100 | --dpi: found for 'Y.SVG', which has no pixels; expected it with a name that ends in .png"
            })
    void anOptionThatWouldChangeNothingIsRefused(String line, String said) {
        assertSaid(line, said);
    }

    @Test
    void aCommandThatThereIsNotIsAnsweredWithThoseThatThereAre() {
        String said = "found 'chek', expected one of the commands " + COMMANDS + "; 'edgewright --help' shows how\n";
        for (String line : List.of("chek", "chek x", "help chek")) {
            assertThat(run((Object[]) line.split(" "))).as(line).isEqualTo(new Ended(2, "", said));
        }
        assertThat(run())
                .isEqualTo(new Ended(2, "", "found no command, expected one; 'edgewright --help' shows how\n"));
        assertThat(run("--chek").err())
                .isEqualTo(
                        "found '--chek', expected one of the options --help, --version; 'edgewright --help' shows how\n");
    }

    @Test
    void aNameThatBeginsWithAnAtIsTheNameOfAChart() {
        assertThat(run("check", "@no.border.json").err())
                .isEqualTo("@no.border.json: there is no such file; expected one to read\n");
    }

    @Test
    void whatIsQuotedStaysInItsLine() {
        assertThat(run("check", "x", "--sides", "1\n2\u001b[31m").err())
                .startsWith("--sides: found '1 2[31m', expected ")
                .hasLineCount(1);
    }

    @Test
    void everyOptionThatTakesAValueSaysSoWhereItHasNone() {
        List<String> asked = new ArrayList<>();
        CommandLineHelper.commands()
                .getSubcommands()
                .forEach((name, command) -> command.getCommandSpec().options().stream()
                        .filter(option -> option.arity().max() > 0)
                        .forEach(option -> {
                            asked.add(name + " " + option.longestName());
                            assertSaid(
                                    name + " x " + option.longestName(),
                                    option.longestName() + ": found nothing after it, expected " + option.paramLabel());
                        }));
        assertThat(asked).hasSizeGreaterThan(40);
    }

    private static void assertSaid(String line, String said) {
        String command = line.substring(0, line.indexOf(' ') < 0 ? line.length() : line.indexOf(' '));
        assertThat(run((Object[]) line.split(" ")))
                .isEqualTo(new Ended(2, "", said + "; 'edgewright " + command + " --help' shows how\n"));
    }
}
