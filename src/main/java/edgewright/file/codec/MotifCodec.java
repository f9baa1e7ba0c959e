package edgewright.file.codec;

import edgewright.chart.Chart;
import edgewright.chart.Extras;
import edgewright.chart.Motif;
import edgewright.chart.NamedMotif;
import edgewright.chart.Stitch;
import edgewright.file.fault.ChartFault;
import edgewright.file.fault.FileFault;
import edgewright.file.fault.JsonFault;
import edgewright.file.fault.Problem;
import edgewright.file.json.JsonText;
import edgewright.file.json.JsonWalk;
import edgewright.file.json.RawJson;
import edgewright.file.json.UnreadableException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A motif under a name, which is a file of its own. Its rounds stand as in a chart: a text a round, the innermost first. */
public final class MotifCodec extends RecordCodec<NamedMotif> {
    /** What the member {@code format} of every motif file says. */
    public static final String FORMAT = "edgewright-motif";

    /** The version that is written, and the newest that is read. */
    private static final int VERSION = 1;

    /** As wide as a side with its sections at the longest that a chart may have. */
    private static final int MOST_COLUMNS = 3 * Chart.MOST_STITCHES;

    private static final FileVersion FILE = new FileVersion(FORMAT, VERSION);

    private static final Codec<String> ROUND = ValueCodecs.text(1, MOST_COLUMNS, (text, in) -> {
        Optional<ChartFault> fault = fault(text);
        fault.ifPresent(in::note);
        return fault.isPresent() ? Optional.empty() : Optional.of(text);
    });

    private final Member<NamedMotif, String> format = required("format", FILE.formatCodec(), motif -> FORMAT);

    {
        // It is judged while it is read, and nobody asks for it afterwards.
        required("version", FILE.versionCodec(), motif -> VERSION);
    }

    private final Member<NamedMotif, String> name = required("name", ValueCodecs.WORDS, NamedMotif::name);
    private final Member<NamedMotif, List<String>> rounds = required(
            "rounds",
            new ListCodec<>(ROUND, ROUND, 1, Chart.MOST_ROUNDS),
            motif -> motif.motif().rounds());

    /**
     * What a JSON text came to.
     *
     * @param motif empty if something is wrong with it
     * @param problems all that is wrong; none if there is a motif
     */
    public record Decoded(Optional<NamedMotif> motif, List<Problem> problems) {
        public Decoded {
            problems = List.copyOf(problems);
        }
    }

    /** Reads the whole text. */
    public Decoded read(String text) {
        try {
            Reading in = new Reading(JsonWalk.ofObject(text));
            Optional<NamedMotif> motif = readAlone(in);
            return new Decoded(motif, motif.isPresent() ? List.of() : in.problems());
        } catch (UnreadableException refusal) {
            Problem problem = refusal.problem();
            boolean another = problem.fault() instanceof JsonFault.NoObject
                    || problem.fault().equals(FileFault.Simple.EMPTY);
            Problem said = another ? Problem.ofFile(new ChartFault.NotAMotif(FORMAT)) : problem;
            return new Decoded(Optional.empty(), List.of(said));
        }
    }

    private static Optional<ChartFault> fault(String round) {
        if (round.isEmpty() || round.length() > MOST_COLUMNS) {
            return Optional.of(new ChartFault.WrongNumber(round.length(), 1, MOST_COLUMNS));
        }
        for (int i = 0; i < round.length(); i++) {
            if (!Motif.isKnown(round.charAt(i))) {
                String letter = Character.toString(round.codePointAt(i));
                return Optional.of(new ChartFault.NoSuchStitch(letter, i + 1, letters()));
            }
        }
        return Optional.empty();
    }

    private static List<String> letters() {
        List<String> letters = new ArrayList<>(List.of(Stitch.LETTERS.split("")));
        letters.add(String.valueOf(Motif.NOTHING));
        letters.add(String.valueOf(Motif.CORNER));
        return letters;
    }

    /**
     * The motif of the object that the reading stands on, which must be all that the text holds.
     *
     * @return empty if something is wrong; what it is stands in the reading
     */
    private Optional<NamedMotif> readAlone(Reading in) {
        FoundMembers found = readMembers(in).orElseThrow();
        in.json().end();
        if (!found.find(format).equals(Optional.of(FORMAT))) {
            in.noteOnly(Problem.ofFile(new ChartFault.NotAMotif(FORMAT)));
        }
        if (in.problems().isEmpty()) {
            List<String> all = found.get(rounds);
            for (int i = 0; i < all.size(); i++) {
                if (!Motif.isLike(all.get(i), all.get(0))) {
                    in.note(Problem.ofFile(new ChartFault.NotLikeFirst(i + 1)));
                }
            }
        }
        return in.problems().isEmpty() ? Optional.of(make(found)) : Optional.empty();
    }

    @Override
    NamedMotif make(FoundMembers found) {
        return new NamedMotif(found.get(name), new Motif(found.get(rounds)), found.extras());
    }

    @Override
    Extras extras(NamedMotif motif) {
        return motif.extras();
    }

    @Override
    String kept(String raw) {
        return RawJson.inLines(raw);
    }

    /** The whole text, a member a line, each line ended by a line feed. */
    @Override
    public String write(NamedMotif motif) {
        List<String> lines = new ArrayList<>();
        members()
                .forEach(member ->
                        member.written(motif).ifPresent(json -> lines.add(JsonText.member(member.name(), json))));
        motif.extras().json().forEach((member, json) -> lines.add(JsonText.member(member, json)));
        return "{\n  " + String.join(",\n  ", lines) + "\n}\n";
    }
}
