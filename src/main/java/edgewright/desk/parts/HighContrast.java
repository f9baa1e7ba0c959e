package edgewright.desk.parts;

import com.formdev.flatlaf.FlatDarkLaf;
import javax.swing.UIDefaults;

/** The look of high contrast. The file with its colours has the name of this class, which stands by itself for that. */
final class HighContrast extends FlatDarkLaf {
    @Override
    public UIDefaults getDefaults() {
        return PlainText.lawFor(super.getDefaults());
    }
}
