package edgewright.cli;

import edgewright.file.BrokenCharts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Small chart files for the commands: A = 2, w = 5, B = 3. */
final class Charts {
    private Charts() {}

    /** A chart that can be worked. */
    static Path sound(Path folder) throws IOException {
        return Files.writeString(folder.resolve("posts.border.json"), BrokenCharts.sound());
    }

    /** A chart with two errors and no warnings: long stitches in round 1 and at the start of round 2. */
    static Path unworkable(Path folder) throws IOException {
        String text = BrokenCharts.sound()
                .replace("\"repeat\": \"bbbbb\"", "\"repeat\": \"bblbb\"")
                .replace(
                        "\"fromCorner\": \"bbbb\", \"repeat\": \"bblbb\"",
                        "\"fromCorner\": \"lbbb\", \"repeat\": \"bbbbb\"");
        return Files.writeString(folder.resolve("unworkable.border.json"), text);
    }

    /** A chart whose second round lacks a stitch. */
    static Path ragged(Path folder) throws IOException {
        String text = BrokenCharts.sound().replace("\"bblbb\"", "\"bbl\"");
        return Files.writeString(folder.resolve("ragged.border.json"), text);
    }
}
