package edgewright.words.own;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A text of the designer's own, as it is to be printed. */
public record OwnText(List<Block> blocks) {
    public OwnText {
        blocks = List.copyOf(blocks);
    }

    /**
     * The text that was typed in the marks of CommonMark (https://spec.commonmark.org/0.31.2/). Emphasis, lists and links to
     * the World Wide Web or to electronic mail are understood. Everything else (headings, code, quotations, pictures, HTML,
     * other links) stands there as it was typed, and a line that is broken on purpose begins a paragraph.
     */
    public static OwnText of(String typed) {
        return new OwnTextReader().read(typed);
    }

    /** A paragraph or a list. */
    public sealed interface Block {}

    /** A paragraph; its spans follow each other without a blank between them. */
    public record Paragraph(List<Span> spans) implements Block {
        public Paragraph {
            spans = List.copyOf(spans);
        }
    }

    /**
     * A list.
     *
     * @param first the number of its first item; empty for a list without numbers
     */
    public record Items(Optional<Integer> first, List<OwnText> items) implements Block {
        public Items {
            Objects.requireNonNull(first);
            items = List.copyOf(items);
        }

        /** What stands before the item at this place, counted from 0: a dash, or a number. */
        public String label(int place) {
            return first.map(number -> number + place + ".").orElse("\u2013");
        }
    }

    /** How much a piece of text is stressed. */
    public enum Stress {
        NONE,
        EMPHASIS,
        STRONG
    }

    /**
     * A piece of a paragraph that is printed alike.
     *
     * @param link where it leads to, as a URI in ASCII; empty for text that leads nowhere
     */
    public record Span(String text, Stress stress, Optional<String> link) {
        public Span {
            Objects.requireNonNull(text);
            Objects.requireNonNull(stress);
            Objects.requireNonNull(link);
        }

        /** Text that is neither stressed nor a link. */
        public static Span plain(String text) {
            return new Span(text, Stress.NONE, Optional.empty());
        }

        /**
         * Where a link leads to, as people write it on paper; empty if the text says so itself, and for what is no link.
         */
        public Optional<String> addressBeside() {
            return link.map(OwnText::shown).filter(address -> !address.equals(shown(text)));
        }
    }

    private static String shown(String address) {
        return address.replaceFirst("^mailto:", "").replaceFirst("/$", "");
    }
}
