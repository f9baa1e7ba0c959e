package edgewright.desk.dialogs;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.ShortText;
import edgewright.desk.work.ChartCommands;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Font;
import java.awt.Window;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.JTextField;

/**
 * A round written in letters, a letter a stitch, in its three sections. Here a ragged round can be given the length it wants
 * stitch by stitch.
 */
public final class LettersDialog extends FormDialog {
    /** So many letters of a name stand in the title. */
    private static final int MOST_OF_NAME = 48;

    private final transient Messages says;
    private final Chart chart;
    private final int number;
    private final transient Language language;
    private final Map<Section, JTextField> fields = new EnumMap<>(Section.class);

    public LettersDialog(Window owner, Chart chart, int number, Language language) {
        super(owner, "letters", language);
        says = language.messages("desk/dialogs");
        String yarn = ShortText.of(chart.yarnOf(number).name(), MOST_OF_NAME);
        titled(
                says.text("letters-titleOf", arg("round", Integer.toString(number)), arg("yarn", yarn)),
                says.text("letters-accept"));
        this.chart = chart;
        this.number = number;
        this.language = language;
        for (Section section : Section.values()) {
            JTextField field =
                    new JTextField(chart.round(number).section(section).letters(), 34);
            field.setFont(new Font(Font.MONOSPACED, Font.PLAIN, field.getFont().getSize()));
            fields.put(section, field);
            field("letters." + section.member(), says.text("letters-section-" + section.member()), field);
        }
        explain(says.text("letters-explain"));
    }

    /** The round as written. */
    public Round round() {
        Round round = chart.round(number);
        for (Section section : Section.values()) {
            round = round.with(
                    section, Stitches.of(fields.get(section).getText().strip()));
        }
        return round;
    }

    @Override
    protected Optional<String> objection() {
        for (Section section : Section.values()) {
            if (!fields.containsKey(section)) {
                return Optional.empty();
            }
            String letters = fields.get(section).getText().strip();
            String name = ChartCommands.sectionName(section, language);
            if (letters.chars()
                    .anyMatch(letter -> Stitch.ofLetter((char) letter).isEmpty())) {
                return Optional.of(says.text("letters-objection-letter", arg("section", name)));
            }
            int expected = chart.border().length(section, number);
            if (number > 1 && letters.length() != expected) {
                return Optional.of(says.text(
                        "letters-objection-length",
                        arg("section", name),
                        count("stitches", letters.length()),
                        count("expected", expected)));
            }
            if (number == 1 && letters.isEmpty()) {
                return Optional.of(says.text("letters-objection-empty", arg("section", name)));
            }
        }
        return Optional.empty();
    }
}
