package edgewright.desk.spoken;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.desk.work.PlaceTexts;
import edgewright.draw.picture.CellLayout;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusListener;
import java.util.Locale;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleComponent;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;

/** One cell of the chart as it is read out, made when it is asked for. Two of the same row and column of a canvas are equal. */
final class SpokenCell extends AccessibleContext implements Accessible, AccessibleComponent {
    private final SpokenChart chart;
    private final int row;
    private final int column;

    SpokenCell(SpokenChart chart, int row, int column) {
        this.chart = chart;
        this.row = row;
        this.column = column;
        setAccessibleParent((Accessible) chart.drawnOn());
    }

    private Optional<GridCell> cell() {
        return ChartTable.of(chart.layout()).cellAt(row, column);
    }

    private PlaceTexts texts() {
        return new PlaceTexts(chart.language());
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        return this;
    }

    @Override
    public AccessibleRole getAccessibleRole() {
        return AccessibleRole.LABEL;
    }

    /** Round, section, place, stitch, yarn, and what was found there. */
    @Override
    public String getAccessibleName() {
        CellLayout layout = chart.layout();
        Optional<GridCell> cell = cell();
        Optional<Place> place = cell.flatMap(chart::placeIn);
        if (place.isPresent()) {
            return texts().cell(chart.verdict(), place.get());
        }
        return cell.flatMap(layout::stitchIn)
                .map(missing -> texts().missing(missing.place()))
                .or(() -> cell.flatMap(layout::cornerIn).map(texts()::cornerChains))
                .orElseGet(() -> texts().beyondCorner(row + 1));
    }

    /** What it stands on and where it lands; nothing where there is no stitch. */
    @Override
    public String getAccessibleDescription() {
        return cell().flatMap(chart::placeIn)
                .map(place -> texts().sentence(chart.verdict().chart(), place))
                .orElse("");
    }

    @Override
    public AccessibleStateSet getAccessibleStateSet() {
        AccessibleStateSet states = new AccessibleStateSet();
        states.add(AccessibleState.TRANSIENT);
        states.add(AccessibleState.VISIBLE);
        if (isShowing()) {
            states.add(AccessibleState.SHOWING);
        }
        if (isFocusTraversable()) {
            states.add(AccessibleState.ENABLED);
            states.add(AccessibleState.SELECTABLE);
            states.add(AccessibleState.FOCUSABLE);
        }
        if (new SpokenSelection(chart).holds(row, column)) {
            states.add(AccessibleState.SELECTED);
        }
        if (isAtCursor()) {
            states.add(AccessibleState.ACTIVE);
            if (chart.drawnOn().isFocusOwner()) {
                states.add(AccessibleState.FOCUSED);
            }
        }
        return states;
    }

    private boolean isAtCursor() {
        return cell().equals(Optional.of(chart.standing()));
    }

    @Override
    public int getAccessibleIndexInParent() {
        return new SpokenTable(chart).getAccessibleIndex(row, column);
    }

    @Override
    public int getAccessibleChildrenCount() {
        return 0;
    }

    @Override
    public Accessible getAccessibleChild(int index) {
        return null;
    }

    @Override
    public Locale getLocale() {
        return chart.drawnOn().getLocale();
    }

    @Override
    public AccessibleComponent getAccessibleComponent() {
        return this;
    }

    /** Where it is on the canvas; empty where there is nothing to be drawn. */
    @Override
    public Rectangle getBounds() {
        return cell().map(chart::boundsOf).orElseGet(Rectangle::new);
    }

    @Override
    public boolean contains(Point point) {
        return new Rectangle(getSize()).contains(point);
    }

    @Override
    public Point getLocationOnScreen() {
        if (!chart.drawnOn().isShowing()) {
            return null;
        }
        Point at = chart.drawnOn().getLocationOnScreen();
        at.translate(getLocation().x, getLocation().y);
        return at;
    }

    @Override
    public Point getLocation() {
        return getBounds().getLocation();
    }

    @Override
    public Dimension getSize() {
        return getBounds().getSize();
    }

    @Override
    public boolean isShowing() {
        return chart.drawnOn().isShowing() && chart.drawnOn().getVisibleRect().intersects(getBounds());
    }

    @Override
    public boolean isVisible() {
        return chart.drawnOn().isVisible();
    }

    @Override
    public boolean isEnabled() {
        return chart.drawnOn().isEnabled();
    }

    @Override
    public boolean isFocusTraversable() {
        return cell().flatMap(chart::placeIn).isPresent();
    }

    /** Brings the cursor there, and the keys to the chart. */
    @Override
    public void requestFocus() {
        new SpokenSelection(chart).addAccessibleSelection(getAccessibleIndexInParent());
        chart.drawnOn().requestFocusInWindow();
    }

    @Override
    public Accessible getAccessibleAt(Point point) {
        return null;
    }

    @Override
    public Color getBackground() {
        return chart.drawnOn().getBackground();
    }

    @Override
    public Color getForeground() {
        return chart.drawnOn().getForeground();
    }

    @Override
    public Cursor getCursor() {
        return chart.drawnOn().getCursor();
    }

    @Override
    public Font getFont() {
        return chart.drawnOn().getFont();
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return chart.drawnOn().getFontMetrics(font);
    }

    /** How it looks is for the chart to say. */
    @Override
    public void setBackground(Color colour) {}

    @Override
    public void setForeground(Color colour) {}

    @Override
    public void setCursor(Cursor cursor) {}

    @Override
    public void setFont(Font font) {}

    @Override
    public void setEnabled(boolean enabled) {}

    @Override
    public void setVisible(boolean visible) {}

    @Override
    public void setLocation(Point point) {}

    @Override
    public void setBounds(Rectangle bounds) {}

    @Override
    public void setSize(Dimension size) {}

    @Override
    public void addFocusListener(FocusListener listener) {}

    @Override
    public void removeFocusListener(FocusListener listener) {}

    @Override
    public boolean equals(Object other) {
        return other instanceof SpokenCell cell && cell.chart == chart && cell.row == row && cell.column == column;
    }

    @Override
    public int hashCode() {
        return 31 * row + column;
    }
}
