package edgewright.booklet;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;

/** The text of the pages of a file; forms without letters are not worked through again and again. */
public class PageText extends PDFTextStripper {
    private final FormContents forms = new FormContents();

    @Override
    public void showForm(PDFormXObject form) throws IOException {
        if (!forms.isOfPathsAlone(form)) {
            super.showForm(form);
        }
    }
}
