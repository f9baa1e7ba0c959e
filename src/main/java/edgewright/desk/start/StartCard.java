package edgewright.desk.start;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.desk.parts.Look;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;

/**
 * A chart on the page: a little picture of its fabric, with words in its place until it is drawn or where it cannot be, its
 * title, and a line about it.
 */
final class StartCard extends StartButton {
    private final transient CardChart stands;
    private final transient Messages says;
    private final Picture picture = new Picture();
    private final JLabel title = new JLabel();
    private final JLabel line = Look.quiet(" ");
    private transient Optional<CardContent> content = Optional.empty();

    /** @param chosen is given the card when it is pressed, whatever has come of looking at its chart */
    StartCard(String name, CardChart stands, Consumer<StartCard> chosen, Language language) {
        super(name, "[" + CardPicture.WIDTH_PX + "!]");
        this.stands = stands;
        says = language.messages("desk/start");
        title.putClientProperty("FlatLaf.styleClass", "semibold");
        add(picture);
        add(title, "wmin 0, growx");
        add(line, "wmin 0, growx");
        addActionListener(event -> chosen.accept(this));
        write(stands.name(), says.text("card-looking"), " ");
    }

    CardChart stands() {
        return stands;
    }

    /** What came of looking at the chart; empty as long as nobody has. */
    Optional<CardContent> content() {
        return content;
    }

    void show(CardContent looked) {
        content = Optional.of(looked);
        if (looked instanceof CardContent.Drawn drawn) {
            Chart chart = drawn.chart();
            picture.image = Optional.of(drawn.picture());
            write(
                    chart.title(),
                    "",
                    stands instanceof CardChart.Recent
                            ? stands.name()
                            : says.text(
                                    "card-rounds",
                                    count("rounds", chart.rounds().size())));
        } else if (looked instanceof CardContent.Gone) {
            write(stands.name(), says.text("card-gone"), says.text("card-gone-line"));
        } else {
            write(stands.name(), says.text("card-unreadable"), says.text("card-unreadable-line"));
        }
    }

    private void write(String name, String inPicture, String below) {
        title.setText(name);
        line.setText(below);
        picture.words = inPicture;
        getAccessibleContext().setAccessibleName(name);
        getAccessibleContext()
                .setAccessibleDescription(
                        inPicture.isEmpty()
                                ? below
                                : says.text("card-heard", arg("state", inPicture), arg("line", below.strip())));
        setToolTipText(stands instanceof CardChart.Recent recent ? recent.file().toString() : null);
        repaint();
    }

    /** The fabric, or words in its place. */
    private static final class Picture extends JComponent {
        private transient Optional<BufferedImage> image = Optional.empty();
        private String words = "";

        Picture() {
            setPreferredSize(new Dimension(CardPicture.WIDTH_PX, CardPicture.HEIGHT_PX));
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            if (image.isPresent()) {
                g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
                g.drawImage(image.get(), 0, 0, getWidth(), getHeight(), null);
            } else {
                g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
                g.setColor(Look.colour("line"));
                g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
                g.setFont(Look.font(12));
                g.setColor(Look.colour("quiet"));
                FontMetrics font = g.getFontMetrics();
                g.drawString(
                        words,
                        (getWidth() - font.stringWidth(words)) / 2,
                        (getHeight() - font.getHeight()) / 2 + font.getAscent());
            }
            g.dispose();
        }
    }
}
