package edgewright.words.own;

import edgewright.words.own.OwnText.Block;
import edgewright.words.own.OwnText.Items;
import edgewright.words.own.OwnText.Paragraph;
import edgewright.words.own.OwnText.Span;
import edgewright.words.own.OwnText.Stress;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** Reads what was typed. Goes through paragraphs without calling itself: marks can be nested thousands deep. */
final class OwnTextReader {
    /** Lists inside lists; what is deeper stands in the innermost of these. */
    private static final int MOST_LEVELS = 3;

    private static final Parser PARSER =
            Parser.builder().enabledBlockTypes(Set.of(ListBlock.class)).build();

    OwnText read(String typed) {
        return new OwnText(blocks(PARSER.parse(typed), 0));
    }

    private List<Block> blocks(Node parent, int level) {
        List<Block> blocks = new ArrayList<>();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof org.commonmark.node.Paragraph) {
                blocks.addAll(new Spans(node).paragraphs());
            } else if (node instanceof ListBlock list && level < MOST_LEVELS) {
                blocks.add(items(list, level + 1));
            } else if (node instanceof ListBlock) {
                blocks.addAll(flattened(node));
            }
        }
        return blocks;
    }

    private Items items(ListBlock list, int level) {
        Optional<Integer> first = list instanceof OrderedList ordered
                ? Optional.of(
                        Optional.ofNullable(ordered.getMarkerStartNumber()).orElse(1))
                : Optional.empty();
        List<OwnText> items = new ArrayList<>();
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            items.add(new OwnText(blocks(item, level)));
        }
        return new Items(first, items);
    }

    /** All paragraphs of lists that are too deep, one after the other. */
    private static List<Block> flattened(Node list) {
        List<Block> blocks = new ArrayList<>();
        Node node = list;
        while (node != null) {
            boolean paragraph = node instanceof org.commonmark.node.Paragraph;
            if (paragraph) {
                blocks.addAll(new Spans(node).paragraphs());
            }
            node = next(node, list, !paragraph);
        }
        return blocks;
    }

    /** The node that follows in the order of the text, or none where the top node ends. */
    private static Node next(Node node, Node top, boolean into) {
        if (into && node.getFirstChild() != null) {
            return node.getFirstChild();
        }
        Node at = node;
        while (at != top && at.getNext() == null) {
            at = at.getParent();
        }
        return at == top ? null : at.getNext();
    }

    /** The spans of one paragraph while it is read. */
    private static final class Spans {
        private final Node paragraph;
        private final List<Block> done = new ArrayList<>();
        private final List<Span> spans = new ArrayList<>();
        private int strong;
        private int emphasis;
        private Optional<String> link = Optional.empty();

        Spans(Node paragraph) {
            this.paragraph = paragraph;
        }

        List<Block> paragraphs() {
            Node node = paragraph.getFirstChild();
            while (node != null) {
                enter(node);
                if (node.getFirstChild() != null && !(node instanceof Image)) {
                    node = node.getFirstChild();
                    continue;
                }
                leave(node);
                while (node.getNext() == null && node.getParent() != paragraph) {
                    node = node.getParent();
                    leave(node);
                }
                node = node.getNext();
            }
            end();
            return done;
        }

        private void enter(Node node) {
            if (node instanceof StrongEmphasis) {
                strong++;
            } else if (node instanceof Emphasis) {
                emphasis++;
            } else if (node instanceof Link to) {
                link = address(to.getDestination());
                if (link.isEmpty()) {
                    add("[");
                }
            } else if (node instanceof Text text) {
                add(text.getLiteral());
            } else if (node instanceof Code code) {
                add("`" + code.getLiteral() + "`");
            } else if (node instanceof HtmlInline html) {
                add(html.getLiteral());
            } else if (node instanceof Image image) {
                add("![" + words(image) + "](" + image.getDestination() + ")");
            } else if (node instanceof SoftLineBreak) {
                add(" ");
            } else if (node instanceof HardLineBreak) {
                end();
            }
        }

        private void leave(Node node) {
            if (node instanceof StrongEmphasis) {
                strong--;
            } else if (node instanceof Emphasis) {
                emphasis--;
            } else if (node instanceof Link to) {
                if (link.isEmpty()) {
                    add("](" + to.getDestination() + ")");
                }
                link = Optional.empty();
            }
        }

        private static String words(Image image) {
            StringBuilder words = new StringBuilder();
            for (Node node = next(image, image, true); node != null; node = next(node, image, true)) {
                words.append(node instanceof Text text ? text.getLiteral() : "");
            }
            return words.toString();
        }

        private void add(String text) {
            Stress stress = strong > 0 ? Stress.STRONG : emphasis > 0 ? Stress.EMPHASIS : Stress.NONE;
            Span span = new Span(text, stress, link);
            int last = spans.size() - 1;
            if (last >= 0
                    && spans.get(last).stress() == stress
                    && spans.get(last).link().equals(link)) {
                spans.set(last, new Span(spans.get(last).text() + text, stress, link));
            } else {
                spans.add(span);
            }
        }

        private void end() {
            if (spans.stream().anyMatch(span -> !span.text().isBlank())) {
                done.add(new Paragraph(spans));
            }
            spans.clear();
        }
    }

    /** Where a link may lead to: the World Wide Web, or electronic mail. */
    private static Optional<String> address(String destination) {
        try {
            URI uri = new URI(destination);
            String scheme = uri.getScheme() == null ? "" : uri.getScheme().toLowerCase(Locale.ROOT);
            boolean web = (scheme.equals("https") || scheme.equals("http")) && uri.getHost() != null;
            boolean mail =
                    scheme.equals("mailto") && uri.getSchemeSpecificPart().contains("@");
            return web || mail ? Optional.of(uri.toASCIIString()) : Optional.empty();
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }
}
