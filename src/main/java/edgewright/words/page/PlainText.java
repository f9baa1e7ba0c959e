package edgewright.words.page;

import static edgewright.texts.Arg.arg;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A written pattern as plain text, at most {@value #WIDTH} columns wide where the words allow it. Headings are underlined; a
 * line that goes on is indented further than the one it continues.
 *
 * <p>The table of counts is left out: each count stands beside its round already.
 */
public final class PlainText implements TextBlockPrinter {
    /** The most characters in a line. */
    public static final int WIDTH = 108;

    private static final String INDENT = "  ";

    /** The parts whose blocks have blank lines between them. */
    private static final Set<PatternPart.Kind> APART = EnumSet.of(
            PatternPart.Kind.NOTES,
            PatternPart.Kind.SET_UP,
            PatternPart.Kind.JOINING,
            PatternPart.Kind.ROUNDS,
            PatternPart.Kind.BACK,
            PatternPart.Kind.TECHNIQUES);

    private final StringBuilder text = new StringBuilder();
    /** What stands before the first line of a block of the part being printed. */
    private String margin = "";

    private PlainText() {}

    /** The whole pattern; the last line ends with a line feed. */
    public static String of(PatternText pattern) {
        PlainText page = new PlainText();
        for (PatternPart part : pattern.parts()) {
            page.part(part);
        }
        return page.text.toString();
    }

    /**
     * Versions of one pattern after one another, what differs in each under its own heading; the last line ends with a line feed.
     *
     * @param versions of one chart, at least one; one alone is printed as {@link #of(PatternText)} prints it
     */
    public static String of(List<TermsVersion> versions) {
        return of(versions, OwnParts.NONE);
    }

    /** The same with what the designer adds; of pictures it says what they show. */
    public static String of(List<TermsVersion> versions, OwnParts own) {
        PlainText page = new PlainText();
        Messages phrases = versions.get(0).language().messages("words/phrases");
        page.part(versions.get(0).heading());
        page.own(phrases, own, false);
        if (versions.size() == 1) {
            versions.get(0).body().forEach(page::part);
        } else {
            page.versions(versions);
        }
        page.own(phrases, own, true);
        return page.text.toString();
    }

    private void versions(List<TermsVersion> versions) {
        TermsParts parts = new TermsParts(versions);
        parts.before().forEach(this::part);
        for (TermsVersion version : parts.apart()) {
            text.append('\n');
            heading(version.name(), "=");
            version.body().forEach(this::part);
        }
        if (!parts.after().isEmpty()) {
            text.append('\n');
            heading(parts.name(), "=");
            parts.after().forEach(this::part);
        }
    }

    /** Lines wrapped as in {@link #of}, the first at the margin and the others indented; each ends with a line feed. */
    public static String of(TextBlock.RoundWords round) {
        PlainText page = new PlainText();
        page.round(round);
        return page.text.toString();
    }

    private void part(PatternPart part) {
        if (part.kind() == PatternPart.Kind.COUNTS) {
            return;
        }
        if (text.length() > 0) {
            text.append('\n');
        }
        if (!part.heading().isEmpty()) {
            heading(part.heading(), part.kind() == PatternPart.Kind.HEADING ? "=" : "-");
        }
        // The designer's own lines are indented, so that none of them can pass for a heading or a round.
        margin = part.kind() == PatternPart.Kind.DESIGNER_NOTES ? INDENT : "";
        boolean first = true;
        for (TextBlock block : part.blocks()) {
            if (APART.contains(part.kind()) && !first) {
                text.append('\n');
            }
            first = false;
            block.printOn(this);
        }
    }

    private void heading(String words, String rule) {
        text.append(words).append('\n');
        text.append(rule.repeat(Math.min(words.length(), WIDTH))).append('\n');
    }

    @Override
    public void prose(TextBlock.Prose prose) {
        wrap(prose.text(), margin, margin + INDENT);
    }

    @Override
    public void entry(TextBlock.Entry entry) {
        wrap(entry.line(), margin, margin + INDENT);
    }

    @Override
    public void round(TextBlock.RoundWords round) {
        List<String> lines = round.lines();
        for (int i = 0; i < lines.size(); i++) {
            String indent = i == 0 ? "" : INDENT;
            wrap(lines.get(i), indent, indent + INDENT);
        }
    }

    @Override
    public void rounds(TextBlock.RoundsTable table) {
        Optional<List<String>> lines = PlainTable.lines(table, WIDTH);
        if (lines.isPresent()) {
            lines.get().forEach(line -> text.append(line).append('\n'));
            return;
        }
        boolean first = true;
        for (TextBlock.RoundRow row : table.rows()) {
            text.append(first ? "" : "\n");
            first = false;
            wrap(row.listed().get(0), "", INDENT);
            row.listed().stream().skip(1).forEach(line -> wrap(line, INDENT, INDENT + INDENT));
        }
    }

    @Override
    public void counts(TextBlock.CountsTable table) {
        // Left out; see the class comment.
    }

    /** Indented under the heading of the designer's words, so that no line of theirs can pass for a heading or a round. */
    private void own(Messages phrases, OwnParts own, boolean closing) {
        OwnParts.Told told = own.told(closing);
        if (told.isEmpty()) {
            return;
        }
        text.append('\n');
        heading(phrases.text("heading-" + PatternPart.Kind.DESIGNER_NOTES), "-");
        String gap = "";
        for (OwnParts.Part part : told.parts()) {
            text.append(gap);
            wrap(part.title(), INDENT, INDENT + INDENT);
            lines(OwnLines.plain().of(part.text()));
            gap = "\n";
        }
        if (!told.pictures().isEmpty()) {
            text.append(gap);
            wrap(own.pictureTitle(), INDENT, INDENT + INDENT);
            lines(OwnLines.listed(
                    told.pictures().stream().map(OwnParts.Picture::words).toList()));
        }
        lines(OwnLines.plain()
                .of(told.imprint(), (word, line) -> phrases.text("entry", arg("word", word), arg("text", line))));
    }

    private void lines(List<OwnLines.Paragraph> paragraphs) {
        for (OwnLines.Paragraph paragraph : paragraphs) {
            String indent = INDENT.repeat(1 + paragraph.indent());
            String label = paragraph.label().isEmpty() ? "" : paragraph.label() + " ";
            text.append(paragraph.goesOn() ? "" : "\n");
            wrap(label + paragraph.text(), indent, indent + INDENT);
        }
    }

    @Override
    public void technique(TextBlock.Technique technique) {
        wrap(technique.told().title(), "", INDENT);
        List<String> steps = technique.told().steps();
        for (int i = 0; i < steps.size(); i++) {
            wrap((i + 1) + ". " + steps.get(i), INDENT, INDENT + INDENT);
        }
    }

    private void wrap(String words, String indent, String hanging) {
        StringBuilder line = new StringBuilder(indent);
        boolean empty = true;
        for (String word : words.split(" ")) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                newLine(line);
                line = new StringBuilder(hanging);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        newLine(line);
    }

    private void newLine(StringBuilder line) {
        text.append(line.toString().replace(Language.NO_BREAK, ' ')).append('\n');
    }
}
