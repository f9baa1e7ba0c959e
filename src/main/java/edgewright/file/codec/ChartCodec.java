package edgewright.file.codec;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.Corner;
import edgewright.chart.Extras;
import edgewright.chart.Heading;
import edgewright.chart.HookSize;
import edgewright.chart.KeptPiece;
import edgewright.chart.NamedSize;
import edgewright.chart.OwnMatter;
import edgewright.chart.OwnSection;
import edgewright.chart.PatternDetails;
import edgewright.chart.Photo;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Start;
import edgewright.chart.Swatch;
import edgewright.chart.Technique;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.chart.YarnUse;
import edgewright.file.fault.ChartFault;
import edgewright.file.fault.Problem;
import edgewright.file.json.JsonText;
import edgewright.file.json.RawJson;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The chart itself. Its layout is this project's own, so that one changed round is one changed line.
 *
 * <p>A member more is a line here and, if it is an object, a codec of its own.
 */
public final class ChartCodec extends RecordCodec<Chart> {
    /** What the member {@code format} of every chart file says. */
    private static final String FORMAT = "edgewright-chart";

    /** The version that is written, and the newest that is read. */
    private static final int VERSION = 1;

    private static final FileVersion FILE = new FileVersion(FORMAT, VERSION);

    private final Member<Chart, String> format = required("format", FILE.formatCodec(), chart -> FORMAT);
    private final Member<Chart, Integer> version = required("version", FILE.versionCodec(), chart -> VERSION);
    private final Member<Chart, String> title = required("title", ValueCodecs.TEXT, Chart::title);
    private final Member<Chart, String> designer = usual("designer", ValueCodecs.TEXT, "", Chart::designer);
    private final Member<Chart, String> notes = usual("notes", ValueCodecs.TEXT, "", Chart::notes);
    private final Member<Chart, Terms> terms =
            usual("terms", ValueCodecs.choice(Terms.values(), Terms::name), Terms.UK, Chart::terms);
    private final Member<Chart, Corner> corner = usual("corner", new CornerCodec(), Corner.DEFAULT, Chart::corner);
    private final Member<Chart, Rules> rules = usual("rules", new RulesCodec(), Rules.DEFAULT, Chart::rules);
    private final Member<Chart, Optional<HookSize>> hook = optional(
            "hook", ValueCodecs.HOOK, Optional.empty(), chart -> chart.making().hook());
    private final Member<Chart, OptionalInt> yarnWeight = optional(
            "yarnWeight",
            ValueCodecs.whole(0, PatternDetails.MOST_WEIGHT).as(OptionalInt::of, OptionalInt::getAsInt),
            OptionalInt.empty(),
            chart -> chart.making().yarnWeight());
    private final Member<Chart, Optional<Swatch>> swatch = optional(
            "swatch",
            new SwatchCodec().orNone(),
            Optional.empty(),
            chart -> chart.making().swatch());
    private final Member<Chart, Optional<Start>> start = optional(
            "start",
            new StartCodec().orNone(),
            Optional.empty(),
            chart -> chart.making().start());
    private final Member<Chart, Optional<Back>> back = optional(
            "back",
            new BackCodec().orNone(),
            Optional.empty(),
            chart -> chart.making().back());
    private final Member<Chart, Optional<YarnUse>> yarnUse = optional(
            "yarnUse",
            new YarnUseCodec().orNone(),
            Optional.empty(),
            chart -> chart.making().use());
    private final Member<Chart, String> skill =
            optional("skill", ValueCodecs.TEXT, "", chart -> chart.making().skill());
    private final Member<Chart, Technique> technique = optional(
            "technique",
            new TechniqueCodec(),
            Technique.DEFAULT,
            chart -> chart.making().technique());
    private final Member<Chart, List<NamedSize>> sizes = optional(
            "sizes",
            new ListCodec<>(new NamedSizeCodec(), new NamedSizeCodec(), 0, NamedSize.MOST),
            List.of(),
            chart -> chart.making().sizes());
    private final Member<Chart, Optional<KeptPiece>> piece = optional(
            "piece",
            new KeptPieceCodec().orNone(),
            Optional.empty(),
            chart -> chart.making().piece());
    private final Member<Chart, List<Photo>> photos = optional(
            "photos",
            new ListCodec<>(new PhotoCodec(), new PhotoCodec(), 0, Photo.MOST),
            List.of(),
            chart -> chart.own().photos());
    private final Member<Chart, List<OwnSection>> sections = optional(
            "sections",
            new ListCodec<>(new OwnSectionCodec(), new OwnSectionCodec(), 0, OwnSection.MOST),
            List.of(),
            chart -> chart.own().sections());
    private final Member<Chart, Optional<String>> imprint = optional(
            "imprint",
            ValueCodecs.WORDS.orNone(),
            Optional.empty(),
            chart -> chart.own().imprint());
    private final Member<Chart, List<Yarn>> yarns = required("yarns", new YarnsCodec(), Chart::yarns);
    private final Member<Chart, List<Round>> rounds = required(
            "rounds", new ListCodec<>(RoundCodec.first(), RoundCodec.other(), 1, Chart.MOST_ROUNDS), Chart::rounds);

    /** Members that stand in the line of the member before them; each other one begins a line. */
    private final Set<Member<Chart, ?>> inTheSameLine = Set.of(version, designer, corner);

    private static final class YarnsCodec extends ListCodec<Yarn> {
        YarnsCodec() {
            super(new YarnCodec(), new YarnCodec(), 1, Chart.MOST_YARNS);
        }

        @Override
        void counted(int number, Reading in) {
            in.links().yarnsListed(number);
        }
    }

    /**
     * The chart of the object that the reading stands on, which must be all that the text holds.
     *
     * @return empty if something is wrong; what it is stands in the reading
     */
    Optional<Chart> readAlone(Reading in) {
        FoundMembers found = readMembers(in).orElseThrow();
        in.json().end();
        if (!found.find(format).equals(Optional.of(FORMAT))) {
            in.noteOnly(Problem.ofFile(new ChartFault.NotAChart(FORMAT)));
        }
        in.links().judgeYarns(in);
        if (in.problems().isEmpty()) {
            in.links().judgeStart(found.get(rounds).get(0), in);
            in.links().judgeSizes(found.get(rounds).get(0), in);
        }
        return in.problems().isEmpty() ? Optional.of(make(found)) : Optional.empty();
    }

    @Override
    Chart make(FoundMembers found) {
        PatternDetails making = new PatternDetails(
                found.get(start),
                found.get(back),
                found.get(hook),
                found.get(swatch),
                found.get(yarnUse),
                found.get(yarnWeight),
                found.get(skill),
                found.get(technique),
                found.get(sizes),
                found.get(piece));
        OwnMatter own = new OwnMatter(found.get(photos), found.get(sections), found.get(imprint));
        return new Chart(
                new Heading(found.get(title), found.get(designer), found.get(notes), found.get(terms), own),
                found.get(corner),
                found.get(rules),
                found.get(yarns),
                found.get(rounds),
                making,
                found.extras());
    }

    @Override
    Extras extras(Chart chart) {
        return chart.extras();
    }

    @Override
    String kept(String raw) {
        return RawJson.inLines(raw);
    }

    /** The whole text, each line ended by a line feed. */
    @Override
    public String write(Chart chart) {
        StringBuilder text = new StringBuilder("{");
        for (Member<Chart, ?> member : members()) {
            member.written(chart).ifPresent(json -> {
                // Notes can be long. Then they have a line of their own.
                boolean inLine = inTheSameLine.contains(member)
                        || (member.equals(notes) && chart.notes().isEmpty());
                append(text, inLine ? " " : "\n  ", JsonText.member(member.name(), json));
            });
        }
        chart.extras().json().forEach((name, json) -> append(text, "\n  ", JsonText.member(name, json)));
        return text.append("\n}\n").toString();
    }

    private static void append(StringBuilder text, String gap, String member) {
        text.append(text.length() == 1 ? "" : ",").append(gap).append(member);
    }
}
