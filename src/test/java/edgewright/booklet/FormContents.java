package edgewright.booklet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/**
 * What the forms of a document say, each read once: a page shows the same few forms thousands of times, and a reader that
 * parses them each time does little else.
 */
final class FormContents {
    /** An operator with what stands before it. */
    record Step(Operator operator, List<COSBase> operands) {}

    /** What shows text, shows something else, or is part of the structure of a page (ISO 32000-1, 8.10, 9.4.3 and 14.6). */
    private static final Set<String> MORE_THAN_PATHS =
            Set.of("Tj", "TJ", "'", "\"", "Do", "BMC", "BDC", "EMC", "MP", "DP");

    private final IdentityHashMap<COSStream, List<Step>> read = new IdentityHashMap<>();

    /** Whether a form only paints paths: it has no letters, no mark of structure, and shows nothing of another object. */
    boolean isOfPathsAlone(PDFormXObject form) throws IOException {
        return steps(form).stream()
                .noneMatch(step -> MORE_THAN_PATHS.contains(step.operator().getName()));
    }

    /** The operators of a form in their order. */
    List<Step> steps(PDFormXObject form) throws IOException {
        List<Step> steps = read.get(form.getCOSObject());
        if (steps == null) {
            steps = parse(form);
            read.put(form.getCOSObject(), steps);
        }
        return steps;
    }

    private static List<Step> parse(PDFormXObject form) throws IOException {
        List<Step> steps = new ArrayList<>();
        List<COSBase> operands = new ArrayList<>();
        for (Object token : new PDFStreamParser(form).parse()) {
            if (token instanceof Operator operator) {
                steps.add(new Step(operator, List.copyOf(operands)));
                operands.clear();
            } else {
                operands.add((COSBase) token);
            }
        }
        return steps;
    }
}
