package edgewright.booklet.press;

import edgewright.booklet.own.EncodedPicture;
import edgewright.draw.paint.Area;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * The marks that a document prints again and again, each kept once as a form (ISO 32000-1, 8.10) and stamped wherever it
 * belongs, and its pictures in pixels (8.9).
 */
public final class MarkStamps {
    /** Room around a stamp, so that no rounding cuts it. */
    private static final double EDGE_MM = 0.02;

    private final PDDocument document;
    private final Map<String, PDFormXObject> stamps = new HashMap<>();

    public MarkStamps(PDDocument document) {
        this.document = document;
    }

    /** A picture as an object of the document. */
    PDImageXObject picture(EncodedPicture picture) throws IOException {
        return PDImageXObject.createFromByteArray(document, picture.bytes(), picture.mediaType());
    }

    /** Whether there is a stamp for these operators. */
    boolean has(String operators) {
        return stamps.containsKey(operators);
    }

    /**
     * The stamp for these operators, which is made if there is none.
     *
     * @param bounds what they draw on, measured from their own zero
     */
    PDFormXObject stamp(String operators, Area bounds) throws IOException {
        PDFormXObject stamp = stamps.get(operators);
        if (stamp == null) {
            stamp = new PDFormXObject(document);
            Area room = bounds.grown(EDGE_MM);
            stamp.setBBox(new PDRectangle(
                    (float) room.xMm(), (float) room.yMm(), (float) room.widthMm(), (float) room.heightMm()));
            stamp.setResources(new PDResources());
            try (OutputStream out = stamp.getStream().createOutputStream(COSName.FLATE_DECODE)) {
                out.write(operators.getBytes(StandardCharsets.US_ASCII));
            }
            stamps.put(operators, stamp);
        }
        return stamp;
    }
}
