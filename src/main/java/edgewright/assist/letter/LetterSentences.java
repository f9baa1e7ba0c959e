package edgewright.assist.letter;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.or;

import edgewright.chart.Chart;
import edgewright.texts.Language;
import edgewright.texts.Messages;

/** Says why there is no band with a text. */
public final class LetterSentences {
    private final Messages says;

    public LetterSentences(Language language) {
        this.says = language.messages("assist");
    }

    /** Which letters the alphabet has not. */
    public String of(LetterAnswer.Missing missing) {
        return says.text(
                "letter-missing",
                or(
                        "characters",
                        missing.characters().stream()
                                .map(character -> says.text("letter-character", arg("character", character)))
                                .toList()));
    }

    /** That there is nothing to work. */
    public String of(LetterAnswer.NoText nothing) {
        return says.text("letter-nothing");
    }

    /** How long the band would be. */
    public String of(LetterAnswer.TooLong tooLong) {
        return says.text("letter-long", count("stitches", tooLong.stitches()), count("most", Chart.MOST_STITCHES));
    }

    /** That two yarns are needed. */
    public String of(LetterAnswer.OneYarn oneYarn) {
        return says.text("letter-yarns");
    }
}
