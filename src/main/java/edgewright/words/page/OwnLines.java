package edgewright.words.page;

import edgewright.words.own.OwnText;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What a designer adds, as paragraphs of text: for plain text, and for Markdown with its marks. */
final class OwnLines {
    private final Function<OwnText.Span, String> spans;
    private final Function<String, String> strong;
    private final String signOfImprint;

    /**
     * @param text what becomes of text
     * @param indent before the first line, in the indents of its list
     * @param label before the text; may be empty
     * @param goesOn whether it follows the paragraph before it without a blank line
     */
    record Paragraph(String text, int indent, String label, boolean goesOn) {}

    /** Without marks: emphasis is not seen, and addresses stand beside their links. */
    static OwnLines plain() {
        return new OwnLines(
                span -> span.addressBeside()
                        .map(address -> span.text() + " (" + address + ")")
                        .orElse(span.text()),
                text -> text,
                "-");
    }

    /** With the marks of Markdown. */
    static OwnLines markdown() {
        return new OwnLines(OwnLines::marked, text -> "**" + MarkdownText.escape(text) + "**", "*");
    }

    /** A list of these lines. */
    static List<Paragraph> listed(List<String> lines) {
        return listed(lines, "-");
    }

    private static List<Paragraph> listed(List<String> lines, String sign) {
        List<Paragraph> listed = new ArrayList<>();
        for (String line : lines) {
            listed.add(new Paragraph(line, 1, sign, !listed.isEmpty()));
        }
        return listed;
    }

    private OwnLines(Function<OwnText.Span, String> spans, Function<String, String> strong, String signOfImprint) {
        this.spans = spans;
        this.signOfImprint = signOfImprint;
        this.strong = strong;
    }

    private static String marked(OwnText.Span span) {
        String mark = switch (span.stress()) {
            case NONE -> "";
            case EMPHASIS -> "*";
            case STRONG -> "**";
        };
        // Marks that stand beside a blank would be no marks.
        String core = span.text().strip();
        int lead = span.text().indexOf(core);
        String stressed = core.isEmpty()
                ? " "
                : span.text().substring(0, lead)
                        + mark
                        + MarkdownText.escape(core)
                        + mark
                        + span.text().substring(lead + core.length());
        return span.link().map(link -> "[" + stressed + "](<" + link + ">)").orElse(stressed);
    }

    /** A text. */
    List<Paragraph> of(OwnText text) {
        return of(text, 0, "");
    }

    private List<Paragraph> of(OwnText text, int indent, String label) {
        List<Paragraph> paragraphs = new ArrayList<>();
        String before = label;
        for (OwnText.Block block : text.blocks()) {
            if (block instanceof OwnText.Paragraph paragraph) {
                String words = paragraph.spans().stream().map(spans).collect(Collectors.joining());
                paragraphs.add(new Paragraph(words.strip(), indent, before, !before.isEmpty()));
            } else {
                OwnText.Items items = (OwnText.Items) block;
                if (!before.isEmpty()) {
                    paragraphs.add(new Paragraph("", indent, before, true));
                }
                for (int i = 0; i < items.items().size(); i++) {
                    String own = items.first().isPresent() ? items.label(i) : "-";
                    paragraphs.addAll(of(items.items().get(i), indent + 1, own));
                }
            }
            before = "";
        }
        if (text.blocks().isEmpty() && !label.isEmpty()) {
            paragraphs.add(new Paragraph("", indent, label, true));
        }
        return firstApart(paragraphs, label);
    }

    /** The first item of a list stands apart from what is before the list. */
    private static List<Paragraph> firstApart(List<Paragraph> paragraphs, String label) {
        List<Paragraph> apart = new ArrayList<>(paragraphs);
        for (int i = 0; i < apart.size(); i++) {
            Paragraph item = apart.get(i);
            boolean begins = item.indent() > 0
                    && label.isEmpty()
                    && (i == 0 || apart.get(i - 1).indent() == 0);
            if (begins) {
                apart.set(i, new Paragraph(item.text(), item.indent(), item.label(), false));
            }
        }
        return apart;
    }

    /**
     * The imprint, a word and its text in each line.
     *
     * @param entry makes one line of both
     */
    List<Paragraph> of(List<OwnParts.Line> imprint, BinaryOperator<String> entry) {
        List<String> lines = new ArrayList<>();
        for (OwnParts.Line line : imprint) {
            String words = of(line.text()).stream()
                    .map(paragraph -> (paragraph.label() + " " + paragraph.text()).strip())
                    .collect(Collectors.joining(" "));
            lines.add(entry.apply(strong.apply(line.label()), words));
        }
        // Another sign than that of the list before it begins another list.
        return listed(lines, signOfImprint);
    }
}
