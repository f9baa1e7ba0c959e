package edgewright.cli;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Chart;
import edgewright.file.ChartFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The folder into which a command writes several charts it made of one: all of them or, if one cannot be written, none that was not
 * there before. The folder is made if there is none; files of the same names are replaced, all others left.
 */
final class OutputFolder {
    private final Path folder;
    private final Path source;
    private final Terminal terminal;

    /** @throws BadInput if there is a file of that name, or it cannot be a folder */
    OutputFolder(Path folder, Path source, Terminal terminal) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new BadInput(terminal.says().text("folder-file", arg("folder", ScreenText.name(folder))));
        }
        this.folder = folder;
        this.source = source;
        this.terminal = terminal;
    }

    /**
     * Writes charts.
     *
     * @param kind stands between the name of the source and the number of the chart, from 1
     * @return their files, in the order of the charts
     * @throws BadInput if one of them cannot be written
     */
    List<Path> write(List<Chart> charts, String kind) {
        String stem = source.getFileName().toString();
        stem = stem.endsWith(ChartFiles.ENDING) ? stem.substring(0, stem.length() - ChartFiles.ENDING.length()) : stem;
        List<OutputFile> files = new ArrayList<>();
        for (int i = 1; i <= charts.size(); i++) {
            Path file = folder.resolve(stem + "-" + kind + "-" + i + ChartFiles.ENDING);
            files.add(OutputFile.ofChart(file, List.of(source), terminal));
        }
        List<Path> made = new ArrayList<>();
        try {
            makeFolder(made);
            for (int i = 0; i < files.size(); i++) {
                if (!Files.exists(files.get(i).path())) {
                    made.add(files.get(i).path());
                }
                files.get(i).write(charts.get(i));
            }
        } catch (BadInput e) {
            takeBack(made);
            throw e;
        }
        return files.stream().map(OutputFile::path).toList();
    }

    private void makeFolder(List<Path> made) {
        Path missing = folder.toAbsolutePath().normalize();
        List<Path> parents = new ArrayList<>();
        while (missing != null && !Files.exists(missing)) {
            parents.add(missing);
            missing = missing.getParent();
        }
        Collections.reverse(parents);
        try {
            for (Path parent : parents) {
                Files.createDirectory(parent);
                made.add(parent);
            }
        } catch (IOException e) {
            throw new BadInput(terminal.says().text("folder-notMade", arg("folder", ScreenText.name(folder))));
        }
    }

    private static void takeBack(List<Path> made) {
        Collections.reverse(made);
        for (Path path : made) {
            try {
                Files.deleteIfExists(path);
            } catch (IOException e) {
                // Somebody else has put something there meanwhile: it is theirs.
                return;
            }
        }
    }
}
