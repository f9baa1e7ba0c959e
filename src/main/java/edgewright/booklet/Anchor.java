package edgewright.booklet;

/**
 * A place in the document that can be gone to: a line of the outline and of the list of contents. Two anchors are the same
 * only if they are the same object.
 */
final class Anchor {
    private final String title;
    private final int level;

    /**
     * @param level 1 for a part of the pattern, 2 for a part of that
     */
    Anchor(String title, int level) {
        this.title = title;
        this.level = level;
    }

    String title() {
        return title;
    }

    int level() {
        return level;
    }
}
