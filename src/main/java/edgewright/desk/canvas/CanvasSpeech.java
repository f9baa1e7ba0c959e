package edgewright.desk.canvas;

import static edgewright.texts.Arg.arg;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.check.Verdict;
import edgewright.desk.spoken.SpokenChart;
import edgewright.desk.spoken.SpokenSelection;
import edgewright.desk.spoken.SpokenTable;
import edgewright.desk.work.PlaceTexts;
import edgewright.desk.work.Selection;
import edgewright.draw.picture.CellLayout;
import edgewright.texts.Language;
import java.awt.Rectangle;
import java.beans.PropertyChangeListener;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleSelection;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;
import javax.accessibility.AccessibleTable;
import javax.swing.JComponent;

/**
 * The canvas for those who hear it: a table ({@link SpokenTable}) of which the cell under the cursor is spoken. Its cells are
 * made as they are asked for; two of one row and column are equal.
 */
final class CanvasSpeech extends JComponent.AccessibleJComponent implements SpokenChart {
    private static final long serialVersionUID = 1;

    private final transient ChartCanvas canvas;
    private transient Optional<Accessible> spoken = Optional.empty();
    private boolean isHeard;

    CanvasSpeech(ChartCanvas canvas) {
        canvas.super();
        this.canvas = canvas;
    }

    /** Tells those who hear a canvas, if there are any, that its cursor or what is under it is another. */
    static void follow(ChartCanvas canvas, AccessibleContext context) {
        if (context instanceof CanvasSpeech speech && speech.isHeard) {
            speech.follow();
        }
    }

    private void follow() {
        Optional<Accessible> before = spoken;
        spoken = table().atCursor();
        firePropertyChange(ACCESSIBLE_DESCRIPTION_PROPERTY, null, getAccessibleDescription());
        firePropertyChange(ACCESSIBLE_ACTIVE_DESCENDANT_PROPERTY, before.orElse(null), spoken.orElse(null));
        firePropertyChange(ACCESSIBLE_SELECTION_PROPERTY, false, true);
    }

    private SpokenTable table() {
        return new SpokenTable(this);
    }

    @Override
    public void addPropertyChangeListener(PropertyChangeListener listener) {
        isHeard = true;
        super.addPropertyChangeListener(listener);
    }

    @Override
    public AccessibleRole getAccessibleRole() {
        return AccessibleRole.TABLE;
    }

    @Override
    public AccessibleStateSet getAccessibleStateSet() {
        AccessibleStateSet states = super.getAccessibleStateSet();
        states.add(AccessibleState.MANAGES_DESCENDANTS);
        states.add(AccessibleState.MULTISELECTABLE);
        return states;
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

    @Override
    public AccessibleTable getAccessibleTable() {
        return table();
    }

    @Override
    public AccessibleSelection getAccessibleSelection() {
        return new SpokenSelection(this);
    }

    @Override
    public int getAccessibleChildrenCount() {
        return table().getAccessibleRowCount() * table().getAccessibleColumnCount();
    }

    @Override
    public Accessible getAccessibleChild(int index) {
        return index < 0 || index >= getAccessibleChildrenCount()
                ? null
                : table().getAccessibleAt(table().getAccessibleRow(index), table().getAccessibleColumn(index));
    }

    @Override
    public Language language() {
        return canvas.view().language();
    }

    @Override
    public Verdict verdict() {
        return canvas.bench().verdict();
    }

    @Override
    public CellLayout layout() {
        return canvas.cells();
    }

    @Override
    public int repeats() {
        return canvas.repeats();
    }

    @Override
    public JComponent drawnOn() {
        return canvas;
    }

    @Override
    public Optional<Place> placeIn(GridCell cell) {
        return canvas.placeIn(cell);
    }

    @Override
    public Rectangle boundsOf(GridCell cell) {
        return canvas.boundsOf(cell);
    }

    @Override
    public GridCell standing() {
        return canvas.standing();
    }

    @Override
    public void standIn(GridCell cell) {
        canvas.standAndShow(cell);
    }

    @Override
    public Optional<Selection> marked() {
        return canvas.marking().selection();
    }

    @Override
    public void unmark() {
        canvas.marking().clear();
    }
}
