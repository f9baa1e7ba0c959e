package edgewright.file.codec;

import edgewright.chart.Imprint;
import edgewright.file.fault.ChartFault;
import edgewright.file.fault.FileFault;
import edgewright.file.fault.JsonFault;
import edgewright.file.fault.Problem;
import edgewright.file.json.JsonWalk;
import edgewright.file.json.UnreadableException;
import java.util.List;
import java.util.Optional;

/** Makes an imprint of a JSON text, or says all that is wrong with it. */
public final class ImprintReader {
    private static final ImprintCodec IMPRINT = new ImprintCodec();

    /**
     * What a JSON text came to.
     *
     * @param imprint empty if something is wrong with it
     * @param problems all that is wrong; none if there is an imprint
     */
    public record Decoded(Optional<Imprint> imprint, List<Problem> problems) {
        public Decoded {
            problems = List.copyOf(problems);
        }
    }

    private ImprintReader() {}

    /** Reads the whole text. */
    public static Decoded read(String text) {
        try {
            Reading in = new Reading(JsonWalk.ofObject(text));
            Optional<Imprint> imprint = IMPRINT.readAlone(in);
            return new Decoded(imprint, imprint.isPresent() ? List.of() : in.problems());
        } catch (UnreadableException refusal) {
            Problem problem = refusal.problem();
            boolean another = problem.fault() instanceof JsonFault.NoObject
                    || problem.fault().equals(FileFault.Simple.EMPTY);
            return new Decoded(Optional.empty(), List.of(another ? ofAnotherKind() : problem));
        }
    }

    /** The file was never meant as an imprint. */
    public static Problem ofAnotherKind() {
        return Problem.ofFile(new ChartFault.NotAnImprint(ImprintCodec.FORMAT));
    }
}
