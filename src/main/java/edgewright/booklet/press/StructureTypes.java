package edgewright.booklet.press;

import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** What the file format calls the roles of the parts of a page. */
final class StructureTypes {
    private StructureTypes() {}

    /** The standard structure type of this role. */
    static String of(StructureRole role) {
        return switch (role) {
            case DOCUMENT -> StandardStructureTypes.DOCUMENT;
            case SECTION -> StandardStructureTypes.SECT;
            case H1 -> StandardStructureTypes.H1;
            case H2 -> StandardStructureTypes.H2;
            case H3 -> StandardStructureTypes.H3;
            case PARAGRAPH -> StandardStructureTypes.P;
            case LIST -> StandardStructureTypes.L;
            case ITEM -> StandardStructureTypes.LI;
            case LABEL -> StandardStructureTypes.LBL;
            case BODY -> StandardStructureTypes.L_BODY;
            case TABLE -> StandardStructureTypes.TABLE;
            case TABLE_HEAD -> StandardStructureTypes.T_HEAD;
            case TABLE_BODY -> StandardStructureTypes.T_BODY;
            case ROW -> StandardStructureTypes.TR;
            case HEADER_CELL -> StandardStructureTypes.TH;
            case CELL -> StandardStructureTypes.TD;
            case CONTENTS -> StandardStructureTypes.TOC;
            case CONTENTS_ITEM -> StandardStructureTypes.TOCI;
            case LINK -> StandardStructureTypes.LINK;
            case SPAN -> StandardStructureTypes.SPAN;
            case FIGURE -> StandardStructureTypes.Figure;
        };
    }

    /** What a cell heads that heads those. */
    static String of(Tag.Scope scope) {
        return switch (scope) {
            case COLUMN -> PDTableAttributeObject.SCOPE_COLUMN;
            case ROW -> PDTableAttributeObject.SCOPE_ROW;
        };
    }
}
