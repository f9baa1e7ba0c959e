package edgewright.desk.dialogs;

import edgewright.chart.Chart;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.ShortText;
import edgewright.desk.work.ChartCommands;
import edgewright.desk.work.DeskTexts;
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

    private final Chart chart;
    private final int number;
    private final Map<Section, JTextField> fields = new EnumMap<>(Section.class);

    public LettersDialog(Window owner, Chart chart, int number) {
        super(owner, "letters");
        this.chart = chart;
        this.number = number;
        setTitle(DeskTexts.of(
                "letters.titleOf", number, ShortText.of(chart.yarnOf(number).name(), MOST_OF_NAME)));
        for (Section section : Section.values()) {
            JTextField field =
                    new JTextField(chart.round(number).section(section).letters(), 34);
            field.setFont(new Font(Font.MONOSPACED, Font.PLAIN, field.getFont().getSize()));
            fields.put(section, field);
            field("letters." + section.member(), field);
        }
        explain(DeskTexts.of("letters.explain"));
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
            String name = ChartCommands.sectionName(section);
            if (letters.chars()
                    .anyMatch(letter -> Stitch.ofLetter((char) letter).isEmpty())) {
                return Optional.of(DeskTexts.of("letters.objection.letter", name));
            }
            int expected = chart.shape().length(section, number);
            if (number > 1 && letters.length() != expected) {
                return Optional.of(DeskTexts.of("letters.objection.length", name, letters.length(), expected));
            }
            if (number == 1 && letters.isEmpty()) {
                return Optional.of(DeskTexts.of("letters.objection.empty", name));
            }
        }
        return Optional.empty();
    }
}
