package edgewright.desk;

import edgewright.draw.FabricLook;
import edgewright.draw.PictureStyle;
import java.awt.Window;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JSpinner;

/** How the chart is to be written as a picture: what it shows, in which kind of file, and how large. */
final class PictureDialog extends FormDialog {
    /** The kinds of picture file. */
    enum Kind {
        SVG,
        PNG;

        /** The ending of its names, with the dot. */
        String ending() {
            return "." + name().toLowerCase(Locale.ROOT);
        }
    }

    /** What the picture shows. */
    enum Content {
        CHART,
        FABRIC,
        MARKS
    }

    private static final int MOST_PX = 200;
    private static final double MM_PER_INCH = 25.4;

    private final View view;
    private final JComboBox<Kind> kind = new JComboBox<>(Kind.values());
    private final JComboBox<Content> content = new JComboBox<>(Content.values());
    private final JCheckBox legend = Forms.caption(new JCheckBox(), "picture.legend");
    private final JCheckBox turned = Forms.caption(new JCheckBox(), "picture.turned");
    private final JSpinner cell;
    private final JSpinner repeats;

    PictureDialog(Window owner, View view) {
        super(owner, "picture");
        this.view = view;
        kind.setRenderer(Forms.renderer((Kind each) -> Texts.of("picture.kind." + each.name())));
        field("picture.kind", kind);
        content.setRenderer(Forms.renderer((Content each) -> Texts.of("picture.content." + each.name())));
        field("picture.content", content);
        repeats = number("picture.repeats", 2, 1, 20);
        cell = number("picture.cell", 24, 4, MOST_PX);
        legend.setName("picture.legend");
        legend.setSelected(true);
        turned.setName("picture.turned");
        turned.setSelected(true);
        form().add(legend, "span, gaptop 4");
        form().add(turned, "span");
        kind.addActionListener(event -> cell.setEnabled(kind() == Kind.PNG));
        content.addActionListener(event -> legend.setEnabled(content.getSelectedItem() != Content.FABRIC));
        cell.setEnabled(false);
    }

    Kind kind() {
        return (Kind) kind.getSelectedItem();
    }

    /** Dots an inch at which a cell gets as many pixels as were asked for. */
    double dotsPerInch() {
        return value(cell) / PictureStyle.PRINT.cellMm() * MM_PER_INCH;
    }

    PictureStyle style() {
        PictureStyle style = content.getSelectedItem() == Content.FABRIC
                ? PictureStyle.FABRIC.withLook(FabricLook.WORKED)
                : PictureStyle.PRINT
                        .withFabric(content.getSelectedItem() == Content.CHART)
                        .withLegend(legend.isSelected());
        PictureStyle repeated = style.withRepeats(value(repeats));
        return turned.isSelected() ? repeated.withTurn(view.turn()) : repeated;
    }

    @Override
    Optional<String> objection() {
        return Optional.empty();
    }
}
