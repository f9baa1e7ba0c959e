package edgewright.booklet;

import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/**
 * What a part of a page is, for a reader that does not see it: a node of the document's structure tree. Two tags are the
 * same only if they are the same object, since a page may hold two paragraphs that say the same.
 *
 * <p>Roles are the standard structure types of ISO 32000-1, 14.8.4, as {@link StandardStructureTypes} names them. A tag comes into the tree, after its elder siblings,
 * when the first thing that it stands for is printed.
 */
final class Tag {
    /** Whether a header cell heads what stands below it or what stands beside it. */
    enum Scope {
        COLUMN("Column"),
        ROW("Row");

        private final String pdfName;

        Scope(String pdfName) {
            this.pdfName = pdfName;
        }

        String pdfName() {
            return pdfName;
        }
    }

    private final String role;
    private final Optional<Tag> parent;
    private final Optional<String> alternative;
    private final Optional<Scope> scope;
    private final int columns;
    private final Optional<String> language;

    private Tag(String role, Optional<Tag> parent, Optional<String> alternative, Optional<Scope> scope, int columns) {
        this(role, parent, alternative, scope, columns, Optional.empty());
    }

    private Tag(
            String role,
            Optional<Tag> parent,
            Optional<String> alternative,
            Optional<Scope> scope,
            int columns,
            Optional<String> language) {
        this.role = role;
        this.parent = parent;
        this.alternative = alternative;
        this.scope = scope;
        this.columns = columns;
        this.language = language;
    }

    /** The root of a document's tree. */
    static Tag document() {
        return new Tag(StandardStructureTypes.DOCUMENT, Optional.empty(), Optional.empty(), Optional.empty(), 1);
    }

    /** A part of this one. */
    Tag child(String childRole) {
        return new Tag(childRole, Optional.of(this), Optional.empty(), Optional.empty(), 1);
    }

    /** Another part like this one, in a language of its own: a tag of BCP 47. */
    Tag inLanguage(String tag) {
        return new Tag(role, parent, alternative, scope, columns, Optional.of(tag));
    }

    /** A picture in this part, with the words that stand for it. */
    Tag figure(String words) {
        return new Tag(StandardStructureTypes.Figure, Optional.of(this), Optional.of(words), Optional.empty(), 1);
    }

    /** A header cell in this row of a table. */
    Tag headerCell(Scope over, int columnsWide) {
        return new Tag(StandardStructureTypes.TH, Optional.of(this), Optional.empty(), Optional.of(over), columnsWide);
    }

    String role() {
        return role;
    }

    Optional<Tag> parent() {
        return parent;
    }

    Optional<String> alternative() {
        return alternative;
    }

    /** The language of all that is in this part, if it is not that of the whole. */
    Optional<String> language() {
        return language;
    }

    Optional<Scope> scope() {
        return scope;
    }

    /** How many columns of its table a cell takes. */
    int columns() {
        return columns;
    }
}
