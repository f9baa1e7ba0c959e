package edgewright.booklet;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletPart;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.maker.GuidePages;
import edgewright.booklet.maker.WorksheetPages;
import edgewright.booklet.matter.OwnPages;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnPairs;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.Paginator;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.parts.ContentsPage;
import edgewright.booklet.parts.Cover;
import edgewright.booklet.parts.CoverFacts;
import edgewright.booklet.parts.DraftPages;
import edgewright.booklet.parts.ProvedPages;
import edgewright.booklet.parts.TermsTexts;
import edgewright.booklet.parts.YarnPages;
import edgewright.booklet.sheets.ChartLinks;
import edgewright.booklet.sheets.ChartSheets;
import edgewright.booklet.sheets.CoverPicture;
import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.check.Verdict;
import edgewright.draw.marks.Emphasis;
import edgewright.texts.Messages;
import edgewright.words.page.PatternPart;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A pattern as strips, part by part in the order that was chosen. Parts begin where the one before them ends; only the facts
 * after a cover, and a chart that needs a whole page, begin a page; an introduction stands on the cover if there is room. What a pattern says before its rounds stands in two columns
 * side by side, but for large print; how a round is begun and closed stands there too if the page has room for it, else before
 * the rounds. In both terms, what depends on them comes twice.
 */
public final class PatternPages {
    private static final Set<PatternPart.Kind> FACTS = EnumSet.of(
            PatternPart.Kind.TERMS,
            PatternPart.Kind.NEEDS,
            PatternPart.Kind.DESIGNER_NOTES,
            PatternPart.Kind.NOTES,
            PatternPart.Kind.ABBREVIATIONS,
            PatternPart.Kind.SET_UP);
    private static final Set<PatternPart.Kind> JOINING = EnumSet.of(PatternPart.Kind.JOINING);
    private static final Set<PatternPart.Kind> WORDS = EnumSet.of(PatternPart.Kind.ROUNDS, PatternPart.Kind.BACK);

    /** Columns side by side begin on a page of which this much is left. */
    private static final double LEAST_ROOM = 0.5;

    /** A page before a chart is to be filled this much, if there is something to fill it with. */
    private static final double LEAST_FILLED = 0.5;

    private final TextSetter setter;
    /** For what stands in two columns side by side; where there is but one, for the whole page. */
    private final TextSetter facts;

    private final Messages says;
    private final Chart chart;
    private final BookletOptions options;
    private final List<BookletPart> order;
    private final boolean draft;
    private final Progress progress;
    private final Tag root = Tag.document();
    private final ChartLinks links;
    private final TermsTexts texts;
    private final DraftPages findings;
    private final OwnPages own;
    private final ToldPages told;
    /** Whether it is still to be found out where it stands how a round is begun and closed. */
    private final boolean joiningFloats;
    /** What is said of that, as it is set among the facts and before the rounds. */
    private final Map<BookletPart, List<ColumnSlice>> joining = new EnumMap<>(BookletPart.class);

    /** The facts as they are set without it, and after how many strips they begin. */
    private List<ColumnSlice> factsAlone = List.of();

    private int factsBegin;

    private final List<String> problems = new ArrayList<>();

    public PatternPages(TextSetter setter, Chart chart, BookletOptions options, Verdict verdict, Progress progress) {
        this.setter = setter;
        this.facts = setter.sheet().oneColumn() ? setter : setter.inHalf();
        this.says = setter.says();
        this.chart = chart;
        this.options = options;
        this.order = options.inOrder();
        this.draft = verdict.hasErrors();
        this.progress = progress;
        this.links = new ChartLinks(setter);
        this.texts = new TermsTexts(chart, options, draft);
        this.findings = new DraftPages(verdict, options.language());
        this.own = new OwnPages(setter, chart, options);
        this.told = new ToldPages(setter, chart, options, root, links, texts, own);
        this.joiningFloats = facts.sheet().narrow() && order.containsAll(List.of(BookletPart.FACTS, BookletPart.WORDS));
    }

    /**
     * All strips.
     *
     * @throws java.util.concurrent.CancellationException if it is not to go on
     */
    public List<ColumnSlice> strips() {
        if (order.contains(BookletPart.WORDS)) {
            told.announceRounds();
        }
        Map<BookletPart, List<ColumnSlice>> set = new EnumMap<>(BookletPart.class);
        if (joiningFloats) {
            joining.put(BookletPart.FACTS, told.words(JOINING, facts));
            JOINING.forEach(own::again);
            joining.put(BookletPart.WORDS, told.words(JOINING, setter));
        }
        // The gallery takes in the photographs whose part was not set, so it comes last.
        order.stream()
                .sorted(Comparator.comparing(BookletPart.SECTIONS::equals))
                .forEach(part -> {
                    progress.requireGoOn();
                    set.put(part, set(part));
                });
        if (!order.contains(BookletPart.PROOF) && !options.draft()) {
            // Where drafts are allowed nobody asks what came of it.
            proof();
        }
        return inOrder(set);
    }

    /** What stands against the words of the strips that were set, a sentence each; none if they make the chart. */
    List<String> problems() {
        return List.copyOf(problems);
    }

    /** A part as it is set wherever it stands; nothing of those that depend on where. */
    private List<ColumnSlice> set(BookletPart part) {
        return switch (part) {
            case COVER ->
                new Cover(setter, chart, root)
                        .strips(
                                CoverPicture.of(chart, options),
                                CoverPicture.shown(chart, options),
                                new CoverFacts(chart, options, texts.first()),
                                own);
            case INTRODUCTION -> own.opening(root);
            case SECTIONS -> own.closing(root);
            case FACTS -> told.words(joiningFloats ? FACTS : withJoining(FACTS), facts);
            case WORDS ->
                told.words(joiningFloats || order.contains(BookletPart.FACTS) ? WORDS : withJoining(WORDS), setter);
            case TECHNIQUES -> told.words(EnumSet.of(PatternPart.Kind.TECHNIQUES), setter);
            case COUNTS -> told.counts();
            case FINISHING -> told.words(EnumSet.of(PatternPart.Kind.FINISHING), setter);
            case PROOF -> proof();
            case GUIDE -> new GuidePages(setter, chart, options).set(section(root), anchor(says.text("guide-heading")));
            case WORKSHEET ->
                new WorksheetPages(setter, chart, options).set(section(root), anchor(says.text("worksheet-heading")));
            case SIZES ->
                new WorksheetPages(setter, chart, options).sizes(section(root), anchor(says.text("sizes-part")));
            case YARN -> new YarnPages(setter, chart, options).set(section(root), anchor(says.text("yarn-heading")));
            case CONTENTS, CHART -> List.of();
        };
    }

    private static Set<PatternPart.Kind> withJoining(Set<PatternPart.Kind> kinds) {
        Set<PatternPart.Kind> all = EnumSet.copyOf(kinds);
        all.addAll(JOINING);
        return all;
    }

    /** Everything in its place, with the list of contents and the chart, which depend on what is around them. */
    private List<ColumnSlice> inOrder(Map<BookletPart, List<ColumnSlice>> set) {
        List<ColumnSlice> all = new ArrayList<>();
        List<BookletPart> halves = new ArrayList<>();
        if (order.get(0) != BookletPart.COVER) {
            all.addAll(new Cover(setter, chart, root).title(options.parts().isWorkbook()));
            all.addAll(findings());
        }
        for (BookletPart part : order) {
            if (isInHalves(part)) {
                halves.add(part);
                continue;
            }
            side(halves, set, all);
            List<ColumnSlice> strips = switch (part) {
                case CONTENTS -> contents(set);
                case CHART -> chart(all, set);
                default -> set.get(part);
            };
            boolean goesOn = part == BookletPart.INTRODUCTION && Paginator.heightWithSpaceAbove(strips) <= roomPt(all);
            all.addAll(isAfterCover(all) && !goesOn ? onNewPage(strips) : strips);
            if (part == BookletPart.COVER) {
                all.addAll(onNewPage(findings()));
            }
        }
        side(halves, set, all);
        return all;
    }

    private boolean isInHalves(BookletPart part) {
        return facts.sheet().narrow() && (part == BookletPart.CONTENTS || part == BookletPart.FACTS);
    }

    /** Puts what is set for two columns to the rest. How a round is joined goes with it, or is given to the rounds. */
    private void side(List<BookletPart> halves, Map<BookletPart, List<ColumnSlice>> set, List<ColumnSlice> all) {
        if (halves.isEmpty()) {
            return;
        }
        PageLayout sheet = setter.sheet();
        double room = roomPt(all);
        boolean fresh = isAfterCover(all) || room < LEAST_ROOM * sheet.heightPt();
        double above = fresh ? 0 : 1.5 * sheet.linePt();
        double used = fresh ? 0 : sheet.heightPt() - room + above;
        List<ColumnSlice> pairs = pairs(halves, joiningFloats ? with(set, BookletPart.FACTS) : set, used);
        if (joiningFloats && halves.contains(BookletPart.FACTS)) {
            Map<BookletPart, List<ColumnSlice>> apart = with(set, BookletPart.WORDS);
            factsAlone = pairs(halves, apart, used);
            factsBegin = all.size();
            if (factsAlone.size() < pairs.size()) {
                pairs = factsAlone;
                set.putAll(apart);
            }
            factsAlone.set(0, factsAlone.get(0).spaced(above));
        }
        if (!pairs.isEmpty()) {
            pairs.set(0, pairs.get(0).spaced(above));
        }
        all.addAll(pairs);
        halves.clear();
    }

    private List<ColumnSlice> pairs(List<BookletPart> halves, Map<BookletPart, List<ColumnSlice>> set, double usedPt) {
        List<ColumnSlice> strips = new ArrayList<>();
        halves.forEach(part -> strips.addAll(part == BookletPart.CONTENTS ? contents(set) : set.get(part)));
        return new ArrayList<>(new ColumnPairs(setter.sheet()).set(strips, usedPt));
    }

    /** The parts with the one on joining among the facts, after them, or before the rounds. */
    private Map<BookletPart, List<ColumnSlice>> with(Map<BookletPart, List<ColumnSlice>> set, BookletPart where) {
        List<ColumnSlice> strips = new ArrayList<>(set.get(where));
        strips.addAll(where == BookletPart.FACTS ? strips.size() : 0, joining.get(where));
        Map<BookletPart, List<ColumnSlice>> all = new EnumMap<>(set);
        all.put(where, strips);
        return all;
    }

    /** Whether nothing but the cover stands before, and what comes is not to go on under its facts. */
    private boolean isAfterCover(List<ColumnSlice> before) {
        return !setter.sheet().oneColumn()
                && order.get(0) == BookletPart.COVER
                && before.stream().noneMatch(strip -> !strip.anchors().isEmpty())
                && !before.isEmpty();
    }

    private static List<ColumnSlice> onNewPage(List<ColumnSlice> strips) {
        List<ColumnSlice> moved = new ArrayList<>(strips);
        if (!moved.isEmpty()) {
            moved.set(0, moved.get(0).onNewPage(true));
        }
        return moved;
    }

    private double roomPt(List<ColumnSlice> before) {
        return new Paginator(setter.sheet().heightPt()).roomAfter(before);
    }

    private List<ColumnSlice> findings() {
        return draft && !options.parts().isWorkbook()
                ? findings.set(setter, section(root), anchor(says.text("draft-heading")))
                : List.of();
    }

    /** A line for each part that has a heading. */
    private List<ColumnSlice> contents(Map<BookletPart, List<ColumnSlice>> set) {
        List<Anchor> inside = new ArrayList<>();
        for (BookletPart part : order) {
            if (part == BookletPart.CHART) {
                inside.add(links.chart());
            }
            set.get(part).stream()
                    .flatMap(strip -> strip.anchors().stream())
                    .map(ColumnSlice.Reached::anchor)
                    .filter(anchor -> anchor.level() == 1)
                    .forEach(inside::add);
        }
        return new ContentsPage(facts).set(section(root), anchor(says.text("contents-heading")), inside);
    }

    /**
     * The chart after these strips. How a round is joined comes out of the facts, or of the rounds, and stands across the page
     * between facts and chart, on the page of the facts or on the next, if else a page
     * stayed under half, then none does, and no page comes of it.
     *
     * @param before changed if it does
     */
    private List<ColumnSlice> chart(List<ColumnSlice> before, Map<BookletPart, List<ColumnSlice>> set) {
        List<ColumnSlice> chart = chart(roomPt(before));
        if (!joiningFloats || order.indexOf(BookletPart.FACTS) != order.indexOf(BookletPart.CHART) - 1) {
            return chart;
        }
        Paginator pages = new Paginator(setter.sheet().heightPt());
        List<ColumnSlice> joined = joining.get(BookletPart.WORDS);
        List<ColumnSlice> words = set.get(BookletPart.WORDS);
        List<ColumnSlice> rounds = words.containsAll(joined) ? words.subList(joined.size(), words.size()) : words;
        List<ColumnSlice> without = joinedTo(before.subList(0, factsBegin), factsAlone);
        double least = (1 - LEAST_FILLED) * setter.sheet().heightPt();
        if (pages.mostLeftPt(joinedTo(before, chart)) <= least) {
            return chart;
        }
        int most = pages(before, chart, words);
        Optional<List<ColumnSlice>> best = Optional.empty();
        for (List<ColumnSlice> across : List.of(joined, onNewPage(joined))) {
            List<ColumnSlice> between = joinedTo(across, chart(roomPt(joinedTo(without, across))));
            double left = pages.mostLeftPt(joinedTo(without, between));
            if (left <= least && pages(without, between, rounds) <= most) {
                least = left;
                best = Optional.of(between);
            }
        }
        if (best.isPresent()) {
            before.clear();
            before.addAll(without);
            set.put(BookletPart.WORDS, rounds);
        }
        return best.orElse(chart);
    }

    private int pages(List<ColumnSlice> before, List<ColumnSlice> chart, List<ColumnSlice> words) {
        return new Paginator(setter.sheet().heightPt())
                .pages(joinedTo(joinedTo(before, chart), words))
                .size();
    }

    private static List<ColumnSlice> joinedTo(List<ColumnSlice> first, List<ColumnSlice> second) {
        List<ColumnSlice> both = new ArrayList<>(first);
        both.addAll(second);
        return both;
    }

    private List<ColumnSlice> chart(double roomPt) {
        progress.requireGoOn();
        return new ChartSheets(setter, chart, options, draft ? findings.emphasis() : Emphasis.NONE)
                .set(section(root), links, roomPt);
    }

    /** Works the words back in all terms, and says so once. */
    private List<ColumnSlice> proof() {
        if (draft) {
            return List.of();
        }
        List<ColumnSlice> strips = new ArrayList<>();
        for (Terms terms : options.telling().terms().inTurn()) {
            ProvedPages proved = new ProvedPages(setter, chart, options.withTerms(terms), progress);
            List<ColumnSlice> set = proved.set(section(root), anchor(says.text("proved-heading")));
            problems.addAll(proved.problems());
            if (strips.isEmpty()) {
                strips.addAll(set);
            }
        }
        return strips;
    }

    /** A heading of the booklet's own. */
    private static Anchor anchor(String heading) {
        return new Anchor(heading, 1);
    }

    private static Tag section(Tag parent) {
        return parent.child(StructureRole.SECTION);
    }
}
