package edgewright.desk.yarn;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.YarnCard;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.yarn.Contrast;
import java.awt.Dimension;
import java.awt.Graphics;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JPanel;

/**
 * The rounds side by side in the order in which they are worked, the innermost at the left: above in the colours of their yarns,
 * below in the greys that are left when the colours are taken away. Where two greys come close, the pattern gets lost.
 */
final class GreyStrip extends JPanel {
    private static final int HEIGHT_PX = 64;

    private final transient Chart chart;

    GreyStrip(Chart chart, Language language) {
        Messages says = language.messages("desk/yarn");
        setName("greyStrip");
        setPreferredSize(new Dimension(320, HEIGHT_PX));
        this.chart = chart;
        String greys = IntStream.rangeClosed(1, Math.min(40, chart.rounds().size()))
                .mapToObj(round -> says.text(
                        "yarns-grey",
                        number("round", round),
                        arg("yarn", chart.yarnOf(round).name()),
                        count(
                                "percent",
                                Contrast.grey(chart.yarnOf(round).colour()).red() * 100 / 255)))
                .collect(Collectors.joining(" "));
        getAccessibleContext().setAccessibleName(says.text("yarns-greyStrip"));
        getAccessibleContext().setAccessibleDescription(greys);
        setToolTipText(says.text("yarns-greyStrip-tip"));
    }

    @Override
    protected void paintComponent(Graphics g) {
        int rounds = chart.rounds().size();
        for (int round = 1; round <= rounds; round++) {
            int from = (int) ((long) getWidth() * (round - 1) / rounds);
            int to = (int) ((long) getWidth() * round / rounds);
            Colour colour = chart.yarnOf(round).colour();
            g.setColor(YarnCard.of(colour));
            g.fillRect(from, 0, to - from, getHeight() / 2);
            g.setColor(YarnCard.of(Contrast.grey(colour)));
            g.fillRect(from, getHeight() / 2, to - from, getHeight() - getHeight() / 2);
        }
        g.setColor(Look.colour("line"));
        g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
    }
}
