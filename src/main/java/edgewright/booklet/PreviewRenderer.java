package edgewright.booklet;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;
import org.apache.pdfbox.util.Matrix;

/**
 * Draws pages as the library does, but reads what is printed in many places only once: a worked stitch is such a form, a page
 * has hundreds of them, and the library takes the text of a form apart each time that it is used.
 */
final class PreviewRenderer extends PDFRenderer {
    /** What was painted of a form, for each form that was seen; empty if it paints more than plain paths. */
    private final Map<COSStream, Optional<List<Painted>>> known = new HashMap<>();

    PreviewRenderer(PDDocument document) {
        super(document);
    }

    @Override
    protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
        return new Drawer(parameters);
    }

    private enum Kind {
        FILL,
        STROKE
    }

    /**
     * A path that was painted.
     *
     * @param path in the form's own space
     * @param inner from the space in which its line was measured into the form's own
     * @param state the colours and the line with which it was painted
     */
    private record Painted(Kind kind, int rule, Path2D path, AffineTransform inner, PDGraphicsState state) {}

    private final class Drawer extends PageDrawer {
        /** From the space of the page into that of the form which is being looked at; empty outside one. */
        private Optional<AffineTransform> intoForm = Optional.empty();

        private List<Painted> painted = new ArrayList<>();
        private boolean isPlain;
        private boolean isRepeating;

        Drawer(PageDrawerParameters parameters) throws IOException {
            super(parameters);
        }

        @Override
        public void showForm(PDFormXObject form) throws IOException {
            COSStream stream = form.getCOSObject();
            AffineTransform place =
                    getGraphicsState().getCurrentTransformationMatrix().createAffineTransform();
            if (intoForm.isPresent() || isRepeating) {
                isPlain = false;
                super.showForm(form);
            } else if (!known.containsKey(stream)) {
                look(form, stream, place);
            } else if (known.get(stream).isPresent()) {
                repeat(known.get(stream).get(), place);
            } else {
                super.showForm(form);
            }
        }

        private void look(PDFormXObject form, COSStream stream, AffineTransform place) throws IOException {
            try {
                intoForm = Optional.of(place.createInverse());
            } catch (NoninvertibleTransformException e) {
                super.showForm(form);
                return;
            }
            painted = new ArrayList<>();
            isPlain = true;
            super.showForm(form);
            intoForm = Optional.empty();
            known.put(stream, isPlain ? Optional.of(painted) : Optional.empty());
        }

        private void repeat(List<Painted> paths, AffineTransform place) throws IOException {
            isRepeating = true;
            for (Painted each : paths) {
                saveGraphicsState();
                PDGraphicsState now = getGraphicsState();
                now.setNonStrokingColorSpace(each.state().getNonStrokingColorSpace());
                now.setNonStrokingColor(each.state().getNonStrokingColor());
                now.setNonStrokeAlphaConstant(each.state().getNonStrokeAlphaConstant());
                now.setStrokingColorSpace(each.state().getStrokingColorSpace());
                now.setStrokingColor(each.state().getStrokingColor());
                now.setAlphaConstant(each.state().getAlphaConstant());
                now.setLineWidth(each.state().getLineWidth());
                now.setLineCap(each.state().getLineCap());
                now.setLineJoin(each.state().getLineJoin());
                now.setMiterLimit(each.state().getMiterLimit());
                now.setLineDashPattern(each.state().getLineDashPattern());
                AffineTransform inner = new AffineTransform(place);
                inner.concatenate(each.inner());
                now.setCurrentTransformationMatrix(new Matrix(inner));
                getLinePath().reset();
                getLinePath().append(each.path().getPathIterator(place), false);
                if (each.kind() == Kind.FILL) {
                    super.fillPath(each.rule());
                } else {
                    super.strokePath();
                }
                restoreGraphicsState();
            }
            isRepeating = false;
        }

        @Override
        public void fillPath(int windingRule) throws IOException {
            note(Kind.FILL, windingRule);
            super.fillPath(windingRule);
        }

        @Override
        public void strokePath() throws IOException {
            note(Kind.STROKE, GeneralPath.WIND_NON_ZERO);
            super.strokePath();
        }

        private void note(Kind kind, int rule) {
            intoForm.ifPresent(into -> {
                AffineTransform inner = new AffineTransform(into);
                inner.concatenate(
                        getGraphicsState().getCurrentTransformationMatrix().createAffineTransform());
                painted.add(new Painted(
                        kind,
                        rule,
                        new Path2D.Double(getLinePath(), into),
                        inner,
                        getGraphicsState().clone()));
            });
        }

        @Override
        public void clip(int windingRule) {
            isPlain = false;
            super.clip(windingRule);
        }

        @Override
        public void drawImage(PDImage image) throws IOException {
            isPlain = false;
            super.drawImage(image);
        }

        @Override
        public void shadingFill(COSName shadingName) throws IOException {
            isPlain = false;
            super.shadingFill(shadingName);
        }

        @Override
        public void beginText() throws IOException {
            isPlain = false;
            super.beginText();
        }
    }
}
