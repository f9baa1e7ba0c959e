package edgewright.booklet.page;

import java.util.Optional;

/**
 * What a part of a page is, for a reader that does not see it: a node of the document's structure tree. Two tags are the
 * same only if they are the same object, since a page may hold two paragraphs that say the same.
 *
 * <p>Roles are the standard structure types of ISO 32000-1, 14.8.4, as {@link StructureRole} lists them. A tag comes into the tree, after its elder siblings,
 * when the first thing that it stands for is printed.
 */
public final class Tag {
    /** Whether a header cell heads what stands below it or what stands beside it. */
    public enum Scope {
        COLUMN,
        ROW
    }

    private final StructureRole role;
    private final Optional<Tag> parent;
    private final Optional<String> alternative;
    private final Optional<Scope> scope;
    private final int columns;
    private final Optional<String> language;

    private Tag(
            StructureRole role,
            Optional<Tag> parent,
            Optional<String> alternative,
            Optional<Scope> scope,
            int columns) {
        this(role, parent, alternative, scope, columns, Optional.empty());
    }

    private Tag(
            StructureRole role,
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
    public static Tag document() {
        return new Tag(StructureRole.DOCUMENT, Optional.empty(), Optional.empty(), Optional.empty(), 1);
    }

    /** A part of this one. */
    public Tag child(StructureRole childRole) {
        return new Tag(childRole, Optional.of(this), Optional.empty(), Optional.empty(), 1);
    }

    /** Another part like this one, in a language of its own: a tag of BCP 47. */
    public Tag inLanguage(String tag) {
        return new Tag(role, parent, alternative, scope, columns, Optional.of(tag));
    }

    /** A picture in this part, with the words that stand for it. */
    public Tag figure(String words) {
        return new Tag(StructureRole.FIGURE, Optional.of(this), Optional.of(words), Optional.empty(), 1);
    }

    /** A header cell in this row of a table. */
    Tag headerCell(Scope over, int columnsWide) {
        return new Tag(StructureRole.HEADER_CELL, Optional.of(this), Optional.empty(), Optional.of(over), columnsWide);
    }

    /** A cell in this row of a table. */
    Tag cell(int columnsWide) {
        return new Tag(StructureRole.CELL, Optional.of(this), Optional.empty(), Optional.empty(), columnsWide);
    }

    public StructureRole role() {
        return role;
    }

    public Optional<Tag> parent() {
        return parent;
    }

    public Optional<String> alternative() {
        return alternative;
    }

    /** The language of all that is in this part, if it is not that of the whole. */
    public Optional<String> language() {
        return language;
    }

    public Optional<Scope> scope() {
        return scope;
    }

    /** How many columns of its table a cell takes. */
    public int columns() {
        return columns;
    }
}
