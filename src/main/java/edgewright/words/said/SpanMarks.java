package edgewright.words.said;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Marks pieces of text while sentences are made of them, and takes the marks out of what came of it.
 *
 * <p>A message places a piece wherever its language has it; the marks go along, since to a message they are part of the value. They
 * are control characters, which no text of a chart or a language has.
 */
public final class SpanMarks {
    /** Stands before and after the number of a piece, which then begins. */
    private static final char BEGIN = '\u000e';

    private static final char END = '\u000f';

    private final boolean kept;
    private final List<Said> pieces = new ArrayList<>();

    private SpanMarks(boolean kept) {
        this.kept = kept;
    }

    /** Marks nothing: for texts of which nobody asks what says what. */
    public static SpanMarks none() {
        return new SpanMarks(false);
    }

    /** Marks every piece. */
    public static SpanMarks kept() {
        return new SpanMarks(true);
    }

    /** The text as a piece that says this; the text itself if nothing is marked. */
    public String put(String text, Said said) {
        if (!kept || text.isEmpty()) {
            return text;
        }
        pieces.add(said);
        return BEGIN + Integer.toString(pieces.size() - 1) + BEGIN + text + END;
    }

    /** A text that was made of marked pieces, without the marks. */
    public SaidText taken(String marked) {
        if (marked.indexOf(BEGIN) < 0) {
            return new SaidText(marked, List.of());
        }
        StringBuilder text = new StringBuilder(marked.length());
        List<SaidSpan> spans = new ArrayList<>();
        Deque<Open> open = new ArrayDeque<>();
        for (int i = 0; i < marked.length(); i++) {
            char at = marked.charAt(i);
            if (at == BEGIN) {
                int end = marked.indexOf(BEGIN, i + 1);
                Said said = pieces.get(Integer.parseInt(marked, i + 1, end, 10));
                open.push(new Open(spans.size(), said, text.length()));
                // Holds the place of the piece, which lies before all those within it.
                spans.add(new SaidSpan(text.length(), Integer.MAX_VALUE, said));
                i = end;
            } else if (at == END) {
                Open ended = open.pop();
                spans.set(ended.number(), new SaidSpan(ended.begin(), text.length(), ended.said()));
            } else {
                text.append(at);
            }
        }
        return new SaidText(text.toString(), spans);
    }

    /** A piece of which the end has not come yet. */
    private record Open(int number, Said said, int begin) {}
}
