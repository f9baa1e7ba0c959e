package edgewright.booklet.page;

/** What a part of a page is to a reader that does not see it: the standard structure types of ISO 32000-1, 14.8.4. */
public enum StructureRole {
    /** The whole document. */
    DOCUMENT,
    /** A part with a heading. */
    SECTION,
    /** The title. */
    H1,
    /** The heading of a part. */
    H2,
    /** A heading within a part. */
    H3,
    /** A paragraph. */
    PARAGRAPH,
    /** A list. */
    LIST,
    /** An item of a list: a label and its body. */
    ITEM,
    /** The label of an item. */
    LABEL,
    /** The body of an item. */
    BODY,
    /** A table. */
    TABLE,
    /** The rows that head a table. */
    TABLE_HEAD,
    /** The rows of a table below its head. */
    TABLE_BODY,
    /** A row of a table. */
    ROW,
    /** A cell that heads a row or a column. */
    HEADER_CELL,
    /** Any other cell. */
    CELL,
    /** A list of contents. */
    CONTENTS,
    /** A line of a list of contents. */
    CONTENTS_ITEM,
    /** A way to another place in the document. */
    LINK,
    /** Words of a paragraph that are set apart. */
    SPAN,
    /** A picture, with words that stand for it. */
    FIGURE
}
