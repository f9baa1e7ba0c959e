package edgewright.words.page;

import static edgewright.texts.Arg.arg;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A written pattern as Markdown, as in https://spec.commonmark.org/0.31.2/ with the tables of
 * https://github.github.com/gfm/#tables-extension-. What the designer wrote and what the words need, asterisks among them, comes
 * out as it is and never as markup.
 */
public final class MarkdownText implements TextBlockPrinter {
    /** All ASCII punctuation may be escaped; these begin markup somewhere, or did in older dialects. */
    private static final Pattern MARKUP = Pattern.compile("[\\\\`*_{}\\[\\]<>#|~&!]");

    /** A line that would begin a list, a rule or an underlined heading. */
    private static final Pattern LINE_START = Pattern.compile("^(?:[-+=]|\\d{1,9}(?=[.)]))");

    private final Messages phrases;
    private final StringBuilder text = new StringBuilder();
    private boolean inList;

    /** Signs before the heading of a part; that of a round has one more. */
    private String level = "##";

    private MarkdownText(Messages phrases) {
        this.phrases = phrases;
    }

    /**
     * The whole pattern; the last line ends with a line feed. Of several versions each has a heading of the second level, under
     * it the parts that differ, one level lower.
     *
     * @param versions of one chart, at least one
     */
    public static String of(List<TermsVersion> versions) {
        return of(versions, OwnParts.NONE);
    }

    /** The same with what the designer adds; of pictures it says what they show. */
    public static String of(List<TermsVersion> versions, OwnParts own) {
        boolean single = versions.size() == 1;
        MarkdownText page = new MarkdownText(versions.get(0).language().messages("words/phrases"));
        page.part(versions.get(0).heading());
        page.own(own, false);
        if (single) {
            versions.get(0).body().forEach(page::part);
        } else {
            page.versions(new TermsParts(versions));
        }
        page.own(own, true);
        return page.text.toString();
    }

    private void versions(TermsParts parts) {
        level = "##";
        parts.before().forEach(this::part);
        for (TermsVersion version : parts.apart()) {
            paragraph("## " + escape(version.name()));
            level = "###";
            version.body().forEach(this::part);
        }
        level = "##";
        parts.after().forEach(this::part);
    }

    private void part(PatternPart part) {
        if (!part.heading().isEmpty()) {
            paragraph((part.kind() == PatternPart.Kind.HEADING ? "#" : level) + " " + escape(part.heading()));
        }
        part.blocks().forEach(block -> block.printOn(this));
        inList = false;
    }

    @Override
    public void prose(TextBlock.Prose prose) {
        paragraph(atStart(prose.text()));
    }

    @Override
    public void entry(TextBlock.Entry entry) {
        String word = "**" + escape(entry.word()) + "**";
        String item = "- "
                + (entry.text().isEmpty()
                        ? word
                        : phrases.text("entry", arg("word", word), arg("text", escape(entry.text()))));
        if (inList) {
            text.append(item).append('\n');
        } else {
            paragraph(item);
            inList = true;
        }
    }

    @Override
    public void round(TextBlock.RoundWords round) {
        paragraph(level + "# " + escape(round.name()));
        if (!round.steps().isEmpty()) {
            // One paragraph with hard line breaks, so that it is seen, and read back, where a round ends.
            paragraph(round.steps().stream().map(MarkdownText::atStart).collect(Collectors.joining("\\\n")));
        }
    }

    @Override
    public void rounds(TextBlock.RoundsTable table) {
        head(table.columns());
        for (TextBlock.RoundRow row : table.rows()) {
            List<String> cells = new ArrayList<>(row.cells());
            if (row.across()) {
                // A cell cannot span columns here; those that the words run across stay empty.
                cells.addAll(3, List.of("", ""));
            }
            text.append(row(cells)).append('\n');
        }
    }

    private void head(List<String> columns) {
        paragraph(row(columns));
        text.append(columns.stream().map(column -> "---").collect(Collectors.joining(" | ", "| ", " |")))
                .append('\n');
    }

    @Override
    public void counts(TextBlock.CountsTable table) {
        paragraph(atStart(table.caption()));
        head(table.columns());
        table.rows().forEach(row -> text.append(row(row)).append('\n'));
    }

    @Override
    public void technique(TextBlock.Technique technique) {
        paragraph(level + "# " + escape(technique.told().title()));
        List<String> steps = technique.told().steps();
        paragraph(IntStream.range(0, steps.size())
                .mapToObj(i -> (i + 1) + ". " + atStart(steps.get(i)))
                .collect(Collectors.joining("\n")));
    }

    private static String row(List<String> cells) {
        return cells.stream().map(MarkdownText::escape).collect(Collectors.joining(" | ", "| ", " |"));
    }

    private void paragraph(String words) {
        inList = false;
        text.append(text.length() == 0 ? "" : "\n").append(words).append('\n');
    }

    /** Under the heading of the designer's words, by which a reader knows what is not to be worked. */
    private void own(OwnParts own, boolean closing) {
        OwnParts.Told told = own.told(closing);
        if (told.isEmpty()) {
            return;
        }
        paragraph("## " + escape(phrases.text("heading-" + PatternPart.Kind.DESIGNER_NOTES)));
        for (OwnParts.Part part : told.parts()) {
            paragraph("**" + escape(part.title()) + "**");
            lines(OwnLines.markdown().of(part.text()));
        }
        if (!told.pictures().isEmpty()) {
            paragraph("**" + escape(own.pictureTitle()) + "**");
            lines(OwnLines.listed(told.pictures().stream()
                    .map(picture -> escape(picture.words()))
                    .toList()));
        }
        lines(OwnLines.markdown()
                .of(told.imprint(), (word, line) -> phrases.text("entry", arg("word", word), arg("text", line))));
    }

    private void lines(List<OwnLines.Paragraph> paragraphs) {
        for (OwnLines.Paragraph paragraph : paragraphs) {
            int levels = paragraph.indent() - (paragraph.label().isEmpty() ? 0 : 1);
            String begin = LINE_START.matcher(paragraph.text()).find() ? "\\" : "";
            String line = "   ".repeat(levels)
                    + (paragraph.label().isEmpty() ? "" : paragraph.label() + " ")
                    + begin
                    + paragraph.text();
            text.append(paragraph.goesOn() ? "" : "\n").append(line).append('\n');
        }
    }

    private static String atStart(String words) {
        String bare = bare(words);
        Matcher start = LINE_START.matcher(bare);
        if (!start.find()) {
            return marked(bare);
        }
        // The sign after a number can be escaped, the number itself cannot.
        int sign = Character.isDigit(bare.charAt(0)) ? start.end() : 0;
        return bare.substring(0, sign) + "\\" + bare.charAt(sign) + marked(bare.substring(sign + 1));
    }

    static String escape(String words) {
        return marked(bare(words));
    }

    private static String bare(String words) {
        return words.replace(Language.NO_BREAK, ' ').replaceAll("\\s+", " ").strip();
    }

    private static String marked(String bare) {
        return MARKUP.matcher(bare).replaceAll(Matcher.quoteReplacement("\\") + "$0");
    }
}
