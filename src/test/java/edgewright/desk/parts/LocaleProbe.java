package edgewright.desk.parts;

import edgewright.chart.Colour;
import edgewright.desk.work.Theme;
import edgewright.texts.English;
import edgewright.texts.Messages;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import javax.swing.JColorChooser;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JSpinner;
import javax.swing.KeyStroke;
import javax.swing.SpinnerNumberModel;
import javax.swing.SwingUtilities;

/**
 * A program of its own that says what the desk shows where Java itself speaks the language of the machine: names of keys, lines
 * of menus with their keys, the chooser of colours, a number. Java reads some of these texts once, so another language needs
 * another Java.
 */
final class LocaleProbe {
    private LocaleProbe() {}

    public static void main(String[] arguments) throws Exception {
        Look.speak(English.LANGUAGE);
        SwingUtilities.invokeAndWait(() -> {
            Look.setUp(Theme.LIGHT);
            keys().forEach(key -> say(key + " is " + new KeyNames(English.LANGUAGE).of(key)));
            for (JMenuItem line : lines()) {
                say(line.getClass().getSimpleName() + " " + line.getText() + " painted " + painted(line));
            }
            colours();
            JSpinner spinner = new JSpinner(new SpinnerNumberModel(1234.5, 0, 9999, 0.5));
            TypedNumber.in(spinner);
            say("number " + TypedNumber.field(spinner).getText());
        });
        System.exit(0);
    }

    /** Every key that the desk has, and the modifiers that it does not have yet. */
    private static List<KeyStroke> keys() {
        TreeSet<String> keys = new TreeSet<>();
        Messages says = English.LANGUAGE.messages("desk/parts");
        says.keys().stream()
                .filter(key -> key.startsWith("key-"))
                .forEach(key -> keys.addAll(List.of(says.text(key).split(", ?"))));
        keys.add("ctrl alt shift meta DELETE");
        return keys.stream().map(CommandTexts::key).toList();
    }

    private static List<JMenuItem> lines() {
        DeskAction action = new DeskActions(English.LANGUAGE).get("deleteRounds");
        return List.of(MenuLine.of(action, English.LANGUAGE), MenuLine.oneOf(action, English.LANGUAGE));
    }

    /** In a menu, as it is seen. */
    private static String painted(JMenuItem line) {
        JMenu menu = new JMenu();
        menu.add(line);
        line.setSize(line.getPreferredSize());
        BufferedImage image = new BufferedImage(line.getWidth(), line.getHeight(), BufferedImage.TYPE_INT_RGB);
        line.paint(image.getGraphics());
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        return image.getWidth() + " by " + image.getHeight() + ", " + Arrays.hashCode(pixels);
    }

    private static void colours() {
        ColourDialog dialog = new ColourDialog(null, Colour.parse("#2b2a33"), English.LANGUAGE);
        JColorChooser chooser = (JColorChooser) edgewright.desk.WindowParts.named(dialog, "colourChooser");
        Arrays.stream(chooser.getChooserPanels()).forEach(panel -> say("panel " + panel.getDisplayName()));
        say("dialog " + dialog.getPreferredSize());
        dialog.dispose();
    }

    private static void say(String line) {
        System.out.println(line);
    }
}
