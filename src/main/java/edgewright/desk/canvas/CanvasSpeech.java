package edgewright.desk.canvas;

import static edgewright.texts.Arg.arg;

import edgewright.desk.work.PlaceTexts;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** What the canvas is called, and where its cursor stands, for those who hear it. */
final class CanvasSpeech extends JComponent.AccessibleJComponent {
    private static final long serialVersionUID = 1;

    private final transient ChartCanvas canvas;

    CanvasSpeech(ChartCanvas canvas) {
        canvas.super();
        this.canvas = canvas;
    }

    @Override
    public AccessibleRole getAccessibleRole() {
        return AccessibleRole.CANVAS;
    }

    @Override
    public String getAccessibleName() {
        return canvas.says()
                .text("canvas-name", arg("title", canvas.bench().chart().title()));
    }

    @Override
    public String getAccessibleDescription() {
        return new PlaceTexts(canvas.view().language())
                .sentence(canvas.bench().chart(), canvas.bench().cursor());
    }
}
