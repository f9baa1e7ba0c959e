package edgewright.booklet.matter;

import edgewright.booklet.page.FaceMetrics;
import edgewright.words.own.OwnText.Span;
import edgewright.words.own.OwnText.Stress;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Breaks a paragraph with spans into lines. It is broken at blanks alone, never at a no-break space, and in a word only where
 * that is wider than a line.
 */
final class OwnWords {
    private final FaceMetrics plain;
    private final FaceMetrics bold;
    private final double sizePt;

    /** A piece of a word, all in one span. */
    record Bit(String text, Span span) {}

    /** Bits of one span that stand in one line. */
    record Run(String text, Span span, double xPt, double widthPt) {}

    private record Word(List<Bit> bits) {}

    OwnWords(FaceMetrics plain, FaceMetrics bold, double sizePt) {
        this.plain = plain;
        this.bold = bold;
        this.sizePt = sizePt;
    }

    /**
     * The runs of each line. A run that a word follows ends with a blank, also at the end of a line, so that words are two to
     * whoever reads them out; its width is that of what is seen.
     */
    List<List<Run>> lines(List<Span> spans, double widthPt) {
        List<List<Word>> lines = new ArrayList<>();
        List<Word> line = new ArrayList<>();
        double x = 0;
        for (Word word : words(spans, widthPt)) {
            double width = width(word);
            double gap = line.isEmpty() ? 0 : blank(last(line));
            if (!line.isEmpty() && x + gap + width > widthPt) {
                lines.add(line);
                line = new ArrayList<>();
                x = 0;
                gap = 0;
            }
            line.add(word);
            x += gap + width;
        }
        lines.add(line);
        List<List<Run>> runs = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            runs.add(runs(lines.get(i), i < lines.size() - 1));
        }
        return runs;
    }

    private List<Run> runs(List<Word> words, boolean goesOn) {
        List<Bit> bits = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            List<Bit> own = words.get(i).bits();
            for (int j = 0; j < own.size(); j++) {
                boolean ends = j == own.size() - 1 && (goesOn || i < words.size() - 1);
                String text = own.get(j).text() + (ends ? " " : "");
                int last = bits.size() - 1;
                if (last >= 0 && bits.get(last).span().equals(own.get(j).span())) {
                    bits.set(
                            last,
                            new Bit(bits.get(last).text() + text, own.get(j).span()));
                } else {
                    bits.add(new Bit(text, own.get(j).span()));
                }
            }
        }
        List<Run> runs = new ArrayList<>();
        double x = 0;
        for (Bit bit : bits) {
            double seen = face(bit.span()).widthPt(bit.text().stripTrailing(), sizePt);
            runs.add(new Run(bit.text(), bit.span(), x, seen));
            x += face(bit.span()).widthPt(bit.text(), sizePt);
        }
        return runs;
    }

    private List<Word> words(List<Span> spans, double widthPt) {
        List<Word> words = new ArrayList<>();
        List<Bit> word = new ArrayList<>();
        for (Span span : spans) {
            StringBuilder bit = new StringBuilder();
            for (int c : span.text().codePoints().toArray()) {
                if (Character.isWhitespace(c)) {
                    end(bit, span, word);
                    end(word, words);
                    word = new ArrayList<>();
                } else {
                    bit.appendCodePoint(Character.isSpaceChar(c) ? ' ' : c);
                    if (face(span).widthPt(bit.toString(), sizePt) + width(new Word(word)) > widthPt) {
                        cut(bit, span, word);
                        end(word, words);
                        word = new ArrayList<>();
                    }
                }
            }
            end(bit, span, word);
        }
        end(word, words);
        return words;
    }

    /** Takes what fits of a word that is too wide; the last letter, with its accents, stays for the next line. */
    private static void cut(StringBuilder bit, Span span, List<Bit> word) {
        BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
        letters.setText(bit.toString());
        letters.last();
        int from = letters.previous();
        String rest = bit.substring(Math.max(0, from));
        bit.setLength(Math.max(0, from));
        end(bit, span, word);
        bit.append(rest);
    }

    private static void end(StringBuilder bit, Span span, List<Bit> word) {
        if (bit.length() > 0) {
            word.add(new Bit(bit.toString(), span));
            bit.setLength(0);
        }
    }

    private static void end(List<Bit> word, List<Word> words) {
        if (!word.isEmpty()) {
            words.add(new Word(List.copyOf(word)));
        }
    }

    private double width(Word word) {
        return word.bits().stream()
                .mapToDouble(bit -> face(bit.span()).widthPt(bit.text(), sizePt))
                .sum();
    }

    private double blank(Word before) {
        return face(before.bits().get(before.bits().size() - 1).span()).widthPt(" ", sizePt);
    }

    private FaceMetrics face(Span span) {
        return span.stress() == Stress.NONE ? plain : bold;
    }

    private static Word last(List<Word> words) {
        return words.get(words.size() - 1);
    }
}
