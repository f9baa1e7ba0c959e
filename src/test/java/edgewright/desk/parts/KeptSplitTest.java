package edgewright.desk.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import java.awt.Component;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Panes that are folded to one line. */
class KeptSplitTest {
    /** What changes itself while it is painted asks to be painted again, without end. */
    @ParameterizedTest
    @ValueSource(ints = {JSplitPane.HORIZONTAL_SPLIT, JSplitPane.VERTICAL_SPLIT})
    void aFoldedPaneStaysAsItIsWhileItIsPainted(int way) {
        List<String> changed = execute(() -> {
            List<String> changes = new ArrayList<>();
            KeptSplit split = new KeptSplit("findings", way, new JPanel(), new JPanel(), KeptSplit.Keeps.SECOND, 100);
            split.name("Findings", "Fold the findings");
            split.setSize(400, 400);
            split.fold(true);
            Component line = Stream.of(split.getComponents())
                    .filter(part -> "findings.line".equals(part.getName()))
                    .findFirst()
                    .orElseThrow();
            line.setSize(28, 400);
            line.addPropertyChangeListener(change -> changes.add(change.getPropertyName()));
            line.paint(new BufferedImage(28, 400, BufferedImage.TYPE_INT_RGB).createGraphics());
            return changes;
        });
        assertThat(changed).isEmpty();
    }
}
