package edgewright.desk;

import edgewright.draw.Drawing;
import edgewright.draw.RasterPicture;
import edgewright.draw.SvgPicture;
import edgewright.file.FileProblemException;
import edgewright.file.SafeFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Writes drawings as files, each whole or not at all. */
final class PictureFiles {
    private PictureFiles() {}

    /**
     * Writes a drawing in the place of the file with this name.
     *
     * @param dotsPerInch for pictures in pixels
     */
    static void write(Drawing drawing, PictureDialog.Kind kind, double dotsPerInch, Path file)
            throws FileProblemException {
        SafeFile.write(file, out -> {
            switch (kind) {
                case SVG -> out.write(SvgPicture.of(drawing).getBytes(StandardCharsets.UTF_8));
                case PNG -> RasterPicture.writePng(drawing, dotsPerInch, out);
            }
        });
    }
}
