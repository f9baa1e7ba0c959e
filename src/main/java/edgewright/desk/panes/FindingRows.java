package edgewright.desk.panes;

import edgewright.check.Finding;
import java.util.List;
import javax.swing.AbstractListModel;

/** The listed findings as rows; the whole list is exchanged at once. */
final class FindingRows extends AbstractListModel<Finding> {
    private transient List<FindingChoice.Listed> listed = List.of();

    void show(List<FindingChoice.Listed> shown) {
        int before = listed.size();
        listed = shown;
        if (before > 0) {
            fireIntervalRemoved(this, 0, before - 1);
        }
        if (!listed.isEmpty()) {
            fireIntervalAdded(this, 0, listed.size() - 1);
        }
    }

    /** What stands in a row, counted from 0. */
    FindingChoice.Listed row(int index) {
        return listed.get(index);
    }

    /** The row of a finding, counted from 0; -1 if it is not listed. */
    int indexOf(Finding finding) {
        for (int i = 0; i < listed.size(); i++) {
            if (listed.get(i).finding().equals(finding)) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public int getSize() {
        return listed.size();
    }

    @Override
    public Finding getElementAt(int index) {
        return listed.get(index).finding();
    }
}
