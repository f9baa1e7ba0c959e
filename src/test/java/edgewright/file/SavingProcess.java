package edgewright.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Saves one file after the other under one name, until it is killed; says so, with a byte, whenever it has saved one. */
final class SavingProcess {
    private static final int PIECE = 4_096;

    private SavingProcess() {}

    /** @param arguments the name to save under, then the files to save */
    public static void main(String[] arguments) throws IOException {
        Path file = Path.of(arguments[0]);
        List<byte[]> charts =
                List.of(Files.readAllBytes(Path.of(arguments[1])), Files.readAllBytes(Path.of(arguments[2])));
        for (int i = 0; ; i++) {
            byte[] chart = charts.get(i % charts.size());
            SafeFile.write(file, out -> {
                for (int at = 0; at < chart.length; at += PIECE) {
                    out.write(chart, at, Math.min(PIECE, chart.length - at));
                }
            });
            System.out.write(1);
            System.out.flush();
        }
    }
}
