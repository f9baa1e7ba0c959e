package edgewright.desk.parts;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.desk.work.Theme;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What is written stands out from its ground, and so do the lines by which a part is known.
 *
 * <p>WCAG 2.2: 1.4.3 asks for 4.5 of a text, 1.4.6 for 7 (level AAA), 1.4.11 for 3 of what a part is known by.
 * https://www.w3.org/TR/WCAG22/#contrast-minimum
 */
class ContrastTest {
    /** What is written on what, as the look calls it. */
    private static final List<String> TEXTS = List.of(
            "Label.foreground on Panel.background",
            "TextField.foreground on TextField.background",
            "TextArea.foreground on TextArea.background",
            "List.foreground on List.background",
            "List.selectionForeground on List.selectionBackground",
            "List.selectionInactiveForeground on List.selectionInactiveBackground",
            "Table.foreground on Table.background",
            "Table.selectionForeground on Table.selectionBackground",
            "Table.selectionInactiveForeground on Table.selectionInactiveBackground",
            "TableHeader.foreground on TableHeader.background",
            "Button.foreground on Button.background",
            "Button.default.foreground on Button.default.background",
            "ToggleButton.foreground on ToggleButton.background",
            "ToggleButton.selectedForeground on ToggleButton.selectedBackground",
            "ComboBox.foreground on ComboBox.background",
            "Spinner.foreground on Spinner.background",
            "CheckBox.foreground on Panel.background",
            "TabbedPane.foreground on TabbedPane.background",
            "MenuBar.foreground on MenuBar.background",
            "MenuItem.foreground on MenuItem.background",
            "MenuItem.selectionForeground on MenuItem.selectionBackground",
            "MenuItem.acceleratorForeground on MenuItem.background",
            "MenuItem.acceleratorSelectionForeground on MenuItem.selectionBackground",
            "ToolTip.foreground on ToolTip.background",
            "Edgewright.quiet on Panel.background",
            "Edgewright.quiet on List.background",
            "Edgewright.error on Panel.background",
            "Edgewright.error on List.background",
            "Edgewright.warning on Panel.background",
            "Edgewright.warning on List.background",
            "Edgewright.good on Panel.background",
            "Edgewright.accent on Panel.background");

    /** By what a part is known that high contrast is to show as clearly as its text. */
    private static final List<String> LINES = List.of(
            "Component.borderColor on Panel.background",
            "Component.focusedBorderColor on Panel.background",
            "Button.borderColor on Panel.background",
            "CheckBox.icon.borderColor on Panel.background",
            "Separator.foreground on Panel.background",
            "ScrollBar.thumb on ScrollBar.track",
            "ProgressBar.foreground on ProgressBar.background",
            "Edgewright.line on Panel.background",
            "Edgewright.accent on Edgewright.canvas");

    /**
     * What is told on the canvas by a line or a sign: rulers, what is lit, the ghost's errors; and the frame of the cursor and the
     * axes of mirrors, which lie between lines of white.
     */
    private static final List<String> ON_CANVAS = List.of(
            "Edgewright.quiet on Edgewright.canvas",
            "Edgewright.quiet on Edgewright.paper",
            "Edgewright.accent on Edgewright.canvas",
            "Edgewright.accent on Edgewright.paper",
            "Edgewright.error on Edgewright.canvas",
            "Edgewright.error on Edgewright.paper");

    @AfterEach
    void light() {
        Look.setUp(Theme.LIGHT);
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void everyTextStandsOutFromItsGround(Theme theme) {
        Look.setUp(theme);
        assertThat(tooWeak(TEXTS, theme == Theme.HIGH_CONTRAST ? 7 : 4.5)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(names = "HIGH_CONTRAST")
    void inHighContrastSoDoesEveryLine(Theme theme) {
        Look.setUp(theme);
        assertThat(tooWeak(LINES, 3)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void whatLiesOverTheChartStandsOutFromItsTableAndPaper(Theme theme) {
        Look.setUp(theme);
        assertThat(tooWeak(ON_CANVAS, 3)).isEmpty();
        assertThat(contrast(colour("Edgewright.cursor"), Color.WHITE)).isGreaterThan(3);
    }

    private static List<String> tooWeak(List<String> pairs, double least) {
        List<String> weak = new ArrayList<>();
        for (String pair : pairs) {
            List<Color> both =
                    Stream.of(pair.split(" on ")).map(ContrastTest::colour).toList();
            double contrast = contrast(both.get(0), both.get(1));
            if (contrast < least) {
                weak.add(String.format("%s: %.2f", pair, contrast));
            }
        }
        return weak;
    }

    private static Color colour(String key) {
        Color colour = UIManager.getColor(key);
        assertThat(colour).as(key).isNotNull();
        return colour;
    }

    private static double contrast(Color one, Color other) {
        double brighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (brighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(Color of) {
        return 0.2126 * linear(of.getRed()) + 0.7152 * linear(of.getGreen()) + 0.0722 * linear(of.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
