package edgewright.booklet.page;

/**
 * A place in the document that can be gone to: a line of the outline and of the list of contents. Two anchors are the same
 * only if they are the same object.
 */
public final class Anchor {
    private final String title;
    private final int level;

    /**
     * @param level 1 for a part of the pattern, 2 for a part of that
     */
    public Anchor(String title, int level) {
        this.title = title;
        this.level = level;
    }

    public String title() {
        return title;
    }

    public int level() {
        return level;
    }
}
