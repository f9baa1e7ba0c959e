package edgewright.file;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Chart files that are broken, each in one way, with the sentence that says so. They are made from one sound chart, whose
 * lines are numbered here so that the sentences can be checked by eye.
 */
public final class BrokenCharts {
    /** Lines 1 to 13. */
    private static final String SOUND = """
            {
              "format": "edgewright-chart", "version": 1,
              "title": "Lantern Posts", "designer": "Saltmarsh Studio", "notes": "",
              "terms": "UK", "corner": { "chains": 2 },
              "rules": { "landOnCornerChain": true, "stackLongStitches": false, "looseRun": 9 },
              "yarns": [
                { "id": "A", "name": "Peat", "colour": "#2b2a33" },
                { "id": "B", "name": "Chalk", "colour": "#f2ead8" }
              ],
              "rounds": [
                { "yarn": "A", "fromCorner": "bbb", "repeat": "bbbbb", "toCorner": "bbbb" },
                { "yarn": "B", "fromCorner": "bbbb", "repeat": "bblbb", "toCorner": "bbbbb" }
              ]
            }
            """;

    private static final String NOT_TEXT =
            " is not a chart file: its bytes are not UTF-8; expected text in UTF-8 that begins with '{'";

    private final List<BrokenChart> all = new ArrayList<>();

    /** Puts the file where the test wants it, and says under which name it then is. */
    interface Maker {
        Path make(Path folder) throws IOException;
    }

    /**
     * One broken file.
     *
     * @param name what is broken
     * @param sentence what is said of it, after the name of the file
     */
    public record BrokenChart(String name, Maker maker, String sentence) {
        /** Makes it in this folder. */
        public Path in(Path folder) throws IOException {
            return maker.make(folder);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private BrokenCharts() {}

    /** The sound chart that the others are made from. */
    public static String sound() {
        return SOUND;
    }

    /** All of them. */
    public static List<BrokenChart> all() {
        BrokenCharts charts = new BrokenCharts();
        charts.files();
        charts.encodings();
        charts.endings();
        charts.json();
        charts.doubles();
        charts.hostile();
        charts.heads();
        charts.members();
        charts.yarns();
        charts.rounds();
        charts.making();
        return List.copyOf(charts.all);
    }

    private void files() {
        made(
                "no file at all",
                folder -> folder.resolve("no.border.json"),
                ": there is no such file; expected one to read");
        made("a folder", Files::createDirectories, ": this is a folder; expected a file");
        made(
                "a file without permission to read",
                BrokenCharts::forbidden,
                ": the system does not let you read it; expected a file that you may read");
        made(
                "a link to nothing",
                folder -> Files.createSymbolicLink(folder.resolve("link.border.json"), Path.of("nothing")),
                ": there is no such file; expected one to read");
        made(
                "a link to itself",
                folder -> Files.createSymbolicLink(folder.resolve("link.border.json"), Path.of("link.border.json")),
                ": the system cannot reach it (Too many levels of symbolic links or unable to access attributes of symbolic"
                        + " link); expected a file that it can reach");
        made(
                "a path through a file",
                folder -> Files.writeString(folder.resolve("chart"), SOUND).resolve("more"),
                ": the system cannot reach it (Not a directory); expected a file that it can reach");
    }

    private void encodings() {
        text("nothing in it", "", ": the file is empty; expected a chart");
        text("nothing but blanks", " \t\r\n ", ": the file is empty; expected a chart");
        text("nothing but a byte order mark", "\ufeff", ": the file is empty; expected a chart");
        bytes("Latin-1", SOUND.replace("Lantern", "L\u00e4ntern").getBytes(ISO_8859_1), notUtf8(3));
        bytes("UTF-16", SOUND.getBytes(UTF_16), NOT_TEXT);
        bytes(
                "UTF-16 without a mark",
                SOUND.getBytes(UTF_16LE),
                ", line 1: at column 2 found '\ufffd', expected the name of a member in double quotes or '}'");
        bytes(
                "half a surrogate pair in UTF-8",
                new byte[] {'{', '\n', '"', (byte) 0xed, (byte) 0xa0, (byte) 0x80},
                notUtf8(2));
        bytes("a picture", new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'}, NOT_TEXT);
        byte[] accent = SOUND.replace("Posts", "Post\u00e9").getBytes(UTF_8);
        int inAccent = new String(accent, ISO_8859_1).indexOf('\u00c3') + 1;
        bytes("cut off inside a character", java.util.Arrays.copyOf(accent, inAccent), notUtf8(3));
    }

    private static String notUtf8(int line) {
        return ", line " + line + ": bytes that are not UTF-8; expected text in UTF-8";
    }

    private void endings() {
        cut("cut off at once", "{", 1, "the name of a member in double quotes or '}'");
        cut("cut off in a name", "{\n  \"form", 2, "the double quote at the end of the text");
        cut("cut off in a text", before("Posts"), 3, "the double quote at the end of the text");
        cut("cut off after a colon", before(" { \"chains"), 4, "a value");
        cut("cut off before a colon", before(": { \"chains"), 4, "':'");
        cut("cut off in an escape", before("Posts") + "\\u00", 3, "the double quote at the end of the text");
        text("cut off in a word", before("ue, \"stack"), ", line 5: at column 35 found 'tr', expected a value");
        cut("cut off after a round", before(",\n    { \"yarn\": \"B\""), 11, "',' or ']'");
        cut("cut off after a comma", before("{ \"yarn\": \"B\""), 12, "a value");
        cut("cut off before the last brace", before("\n}\n"), 13, "',' or '}'");
    }

    private void json() {
        swap(
                "a comma too many in an object",
                "{ \"chains\": 2 }",
                "{ \"chains\": 2, }",
                ", line 4: at column 43 found '}', expected the name of a member in double quotes");
        swap(
                "a comma too many in a list",
                "\"bbbbb\" }\n",
                "\"bbbbb\" },\n",
                ", line 13: at column 3 found ']', expected a value");
        swap(
                "a comma too few in an object",
                "\"UK\", ",
                "\"UK\" ",
                ", line 4: at column 17 found '\"', expected ',' or '}'");
        swap(
                "a comma too few in a list",
                "\"bbbb\" },",
                "\"bbbb\" }",
                ", line 12: at column 5 found '{', expected ',' or ']'");
        swap("no colon", "\"version\": 1", "\"version\" 1", ", line 2: at column 43 found '1', expected ':'");
        swap("single quotes", "\"Peat\"", "'Peat'", ", line 7: at column 26 found ''', expected a value");
        swap(
                "a name without quotes",
                "\"terms\"",
                "terms",
                ", line 4: at column 3 found 'terms', expected the name of a member in double quotes");
        swap(
                "a remark",
                "\"terms\"",
                "// UK\n  \"terms\"",
                ", line 4: at column 3 found '/', expected the name of a member in double quotes");
        swap("a word that JSON does not know", "true", "True", ", line 5: at column 35 found 'True', expected a value");
        swap(
                "a number that is none",
                "\"chains\": 2",
                "\"chains\": NaN",
                ", line 4: at column 40 found 'NaN', expected a value");
        swap(
                "a number with a leading nought",
                "\"chains\": 2",
                "\"chains\": 02",
                ", line 4: at column 40 found '02', expected a value");
        swap(
                "a number that starts with a plus",
                "\"chains\": 2",
                "\"chains\": +2",
                ", line 4: at column 40 found '+2', expected a value");
        swap(
                "an escape that JSON does not know",
                "Chalk",
                "Cha\\lk",
                ", line 8: at column 31 found 'l', expected a character that can stand in a text (a line break is written \\n, a backslash \\\\)");
        swap(
                "a line break in a text",
                "Lantern Posts",
                "Lantern\nPosts",
                ", line 3: at column 20 found '\ufffd', expected a character that can stand in a text (a line break is written \\n, a backslash \\\\)");
        swap("the wrong bracket", "}\n  ]\n", "}\n  }\n", ", line 13: at column 3 found '}', expected ',' or ']'");
        text("not JSON at all", "Round 1: 1 ch\n", " is not a chart file: it begins with 'Round', expected '{'");
        text("a script", "#!/bin/sh\n{", " is not a chart file: it begins with '#', expected '{'");
        text("a web page", "\n <html>{}</html>", " is not a chart file: it begins with '<', expected '{'");
        text(
                "a chart without its first brace",
                SOUND.substring(1),
                " is not a chart file: it begins with '\"', expected '{'");
        text(
                "two charts",
                SOUND + SOUND,
                ", line 15: at column 1 found '{' after the end of the chart; expected nothing more");
        text(
                "a word after the end",
                SOUND + "\nend of chart",
                ", line 16: at column 1 found 'end' after the end of the chart; expected nothing more");
    }

    private void doubles() {
        swap(
                "a title twice",
                "\"terms\"",
                "\"title\": \"Reed Bank\", \"terms\"",
                ", line 4, title: the member is here for the second time, first in line 3; expected it once");
        swap(
                "a section twice",
                "\"bblbb\"",
                "\"bblbb\", \"rep\\u0065at\": \"bblbb\"",
                ", line 12, rounds[1].repeat (round 2): the member is here for the second time, first in line 12; expected it once");
        swap(
                "an unknown member of a member twice",
                "\"terms\"",
                "\"gauge\": { \"mm\": 1, \"mm\": 1 }, \"terms\"",
                ", line 4, gauge.mm: the member is here for the second time, first in line 4; expected it once");
    }

    private void hostile() {
        made(
                "larger than any chart",
                folder -> Files.write(folder.resolve("large.border.json"), new byte[16 * 1024 * 1024 + 1]),
                ": the file is too large; expected at most 16,777,216 bytes");
        text(
                "100,000 lists inside each other",
                "{\"a\":" + "[".repeat(100_000),
                ", line 1: objects and lists are nested too deeply; expected at most 100 levels");
        swap(
                "an unknown member that goes too deep",
                "\"terms\"",
                "\"sample\": " + "{\"a\":".repeat(100) + "1" + "}".repeat(100) + ", \"terms\"",
                ", line 4: objects and lists are nested too deeply; expected at most 100 levels");
        swap(
                "a number of many digits",
                "\"chains\": 2",
                "\"chains\": " + "2".repeat(1_001),
                ", line 4: the number is too long; expected at most 1000 characters");
        swap(
                "a number of enormous size",
                "\"chains\": 2",
                "\"chains\": 1e999999999",
                ", line 4, corner.chains: found 1e999999999, expected a whole number from 1 to 3");
        swap(
                "a number whose size is a number of enormous size",
                "\"looseRun\": 9",
                "\"looseRun\": 1e99999999999999999999",
                ", line 5, rules.looseRun: found 1e99999999999999999999, expected a whole number from 1 to 2,147,483,647");
        swap(
                "a number next to nothing",
                "\"chains\": 2",
                "\"chains\": 1e-99999999999999999999",
                ", line 4, corner.chains: found 1e-99999999999999999999, expected a whole number from 1 to 3");
    }

    private void heads() {
        text("a list", "[ 1 ]", " is not a chart file: it begins with '[', expected '{'");
        text("a text", "\"edgewright-chart\"", " is not a chart file: it begins with '\"', expected '{'");
        text("null", "null", " is not a chart file: it begins with 'null', expected '{'");
        String noChart = " is not a chart file: expected a member 'format' with the text 'edgewright-chart'";
        text("an object with nothing in it", "{}", noChart);
        swap("the format of something else", "edgewright-chart", "edgewright-swatch", noChart);
        swap("a format that is no text", "\"edgewright-chart\"", "true", noChart);
        swap(
                "a newer version",
                "\"version\": 1",
                "\"version\": 2",
                ", line 2, version: the file was written by a newer program (version 2 of its format); expected version 1 at most");
        text(
                "a newer version with other members and other types",
                "{\n\"format\": \"edgewright-chart\", \"yarns\": 7,\n\"version\": 3, \"laps\": [] }",
                ", line 3, version: the file was written by a newer program (version 3 of its format); expected version 1 at most");
        swap(
                "a much newer version",
                "\"version\": 1",
                "\"version\": 1e999999999",
                ", line 2, version: the file was written by a newer program (version 1e999999999 of its format); expected version 1 at most");
        swap("version nought", "\"version\": 1", "\"version\": 0", ", line 2, version: found 0, expected version 1");
        swap(
                "a version that is not whole",
                "\"version\": 1",
                "\"version\": 0.5",
                ", line 2, version: found 0.5, expected version 1");
        swap(
                "a version in quotes",
                "\"version\": 1",
                "\"version\": \"1\"",
                ", line 2, version: found text in double quotes, expected a whole number");
        swap(
                "no version",
                "\"version\": 1",
                "\"edition\": 1",
                ", line 1, version: the member is missing; expected a whole number");
    }

    private void members() {
        swap(
                "no title",
                "\"title\"",
                "\"name\"",
                ", line 1, title: the member is missing; expected text in double quotes");
        swap(
                "a title that is null",
                "\"Lantern Posts\"",
                "null",
                ", line 3, title: found null, expected text in double quotes");
        swap(
                "a designer that is a number",
                "\"Saltmarsh Studio\"",
                "7",
                ", line 3, designer: found a number, expected text in double quotes");
        swap(
                "notes in a list",
                "\"notes\": \"\"",
                "\"notes\": [\"\"]",
                ", line 3, notes: found a list in square brackets, expected text in double quotes");
        swap("terms of another country", "\"UK\"", "\"French\"", ", line 4, terms: found 'French', expected UK or US");
        swap("terms in small letters", "\"UK\"", "\"uk\"", ", line 4, terms: found 'uk', expected UK or US");
        swap(
                "a corner that is a number",
                "{ \"chains\": 2 }",
                "2",
                ", line 4, corner: found a number, expected an object in braces");
        swap(
                "a corner without chains",
                "\"chains\": 2",
                "\"chains\": 0",
                ", line 4, corner.chains: found 0, expected a whole number from 1 to 3");
        swap(
                "a corner of four chains",
                "\"chains\": 2",
                "\"chains\": 4",
                ", line 4, corner.chains: found 4, expected a whole number from 1 to 3");
        swap(
                "a corner of two and a half chains",
                "\"chains\": 2",
                "\"chains\": 2.5",
                ", line 4, corner.chains: found 2.5, expected a whole number from 1 to 3");
        swap(
                "chains in quotes",
                "\"chains\": 2",
                "\"chains\": \"2\"",
                ", line 4, corner.chains: found text in double quotes, expected a whole number");
        swap(
                "rules in a list",
                "{ \"landOnCornerChain\": true, \"stackLongStitches\": false, \"looseRun\": 9 }",
                "[]",
                ", line 5, rules: found a list in square brackets, expected an object in braces");
        swap(
                "yes for true",
                "true",
                "\"yes\"",
                ", line 5, rules.landOnCornerChain: found text in double quotes, expected true or false");
        swap(
                "nought for false",
                "false",
                "0",
                ", line 5, rules.stackLongStitches: found a number, expected true or false");
        swap(
                "no long stitch may stand beside another",
                "\"looseRun\": 9",
                "\"looseRun\": 0",
                ", line 5, rules.looseRun: found 0, expected a whole number from 1 to 2,147,483,647");
    }

    private void yarns() {
        swap(
                "no yarns",
                "\"yarns\"",
                "\"threads\"",
                ", line 1, yarns: the member is missing; expected a list in square brackets");
        text(
                "an empty list of yarns",
                SOUND.replaceAll("(?s)\"yarns\": \\[.*?\\]", "\"yarns\": []"),
                ", line 6, yarns: found 0, expected 1 to 64");
        text(
                "yarns in an object",
                SOUND.replaceAll("(?s)\"yarns\": \\[.*?\\]", "\"yarns\": { \"A\": \"Peat\" }"),
                ", line 6, yarns: found an object in braces, expected a list in square brackets");
        text("too many yarns", tooManyYarns(), ", line 6, yarns: found 65, expected 1 to 64");
        swap(
                "a yarn that is a text",
                "{ \"id\": \"A\", \"name\": \"Peat\", \"colour\": \"#2b2a33\" }",
                "\"Peat\"",
                ", line 7, yarns[0]: found text in double quotes, expected an object in braces");
        swap(
                "a yarn without an id",
                "\"id\": \"A\", ",
                "",
                ", line 7, yarns[0].id: the member is missing; expected text in double quotes");
        swap(
                "a yarn with an empty id",
                "\"id\": \"A\"",
                "\"id\": \"\"",
                ", line 7, yarns[0].id: found '', expected an id of 1 to 8 letters or digits");
        swap(
                "a yarn with a long id",
                "\"id\": \"A\"",
                "\"id\": \"DARKPEAT9\"",
                ", line 7, yarns[0].id: found 'DARKPEAT9', expected an id of 1 to 8 letters or digits");
        swap(
                "a yarn with a blank in its id",
                "\"id\": \"A\"",
                "\"id\": \"A 1\"",
                ", line 7, yarns[0].id: found 'A 1', expected an id of 1 to 8 letters or digits");
        swap(
                "two yarns with one id",
                "\"id\": \"B\"",
                "\"id\": \"A\"",
                ", line 8, yarns[1].id: the id 'A' belongs to another yarn already; expected one of its own");
        swap(
                "a yarn without a name",
                "\"name\": \"Chalk\", ",
                "",
                ", line 8, yarns[1].name: the member is missing; expected text in double quotes");
        swap(
                "a yarn without a colour",
                ", \"colour\": \"#f2ead8\"",
                "",
                ", line 8, yarns[1].colour: the member is missing; expected text in double quotes");
        swap(
                "a colour by name",
                "#f2ead8",
                "white",
                ", line 8, yarns[1].colour: found 'white', expected a colour as #rrggbb");
        swap(
                "a colour of three digits",
                "#f2ead8",
                "#fed",
                ", line 8, yarns[1].colour: found '#fed', expected a colour as #rrggbb");
        swap(
                "a colour with a letter that is no digit",
                "#f2ead8",
                "#f2eadg",
                ", line 8, yarns[1].colour: found '#f2eadg', expected a colour as #rrggbb");
    }

    private void rounds() {
        swap(
                "no rounds",
                "\"rounds\"",
                "\"rows\"",
                ", line 1, rounds: the member is missing; expected a list in square brackets");
        text(
                "an empty list of rounds",
                SOUND.replaceAll("(?s)\"rounds\": \\[.*?\\]", "\"rounds\": []"),
                ", line 10, rounds: found 0, expected 1 to 2000");
        text(
                "too many rounds",
                SOUND.replace(
                        "\"rounds\": [",
                        "\"rounds\": ["
                                + "{\"yarn\":\"A\",\"fromCorner\":\"b\",\"repeat\":\"b\",\"toCorner\":\"b\"},"
                                        .repeat(1_999)),
                ", line 10, rounds: found 2001, expected 1 to 2000");
        swap(
                "a round that is null",
                "{ \"yarn\": \"B\", \"fromCorner\": \"bbbb\", \"repeat\": \"bblbb\", \"toCorner\": \"bbbbb\" }",
                "null",
                ", line 12, rounds[1] (round 2): found null, expected an object in braces");
        swap(
                "a round without a yarn",
                "\"yarn\": \"B\", ",
                "",
                ", line 12, rounds[1].yarn (round 2): the member is missing; expected text in double quotes");
        swap(
                "a round in a yarn that is not there",
                "\"yarn\": \"B\"",
                "\"yarn\": \"C\"",
                ", line 12, rounds[1].yarn (round 2): no yarn has the id 'C'; expected A or B");
        swap(
                "a round in yarn number 2",
                "\"yarn\": \"B\"",
                "\"yarn\": 2",
                ", line 12, rounds[1].yarn (round 2): found a number, expected text in double quotes");
        swap(
                "a round without a repeat",
                "\"repeat\": \"bblbb\"",
                "\"wiederholung\": \"bblbb\"",
                ", line 12, rounds[1].repeat (round 2): the member is missing; expected text in double quotes");
        swap(
                "stitches in a list",
                "\"bblbb\"",
                "[\"b\",\"b\",\"l\",\"b\",\"b\"]",
                ", line 12, rounds[1].repeat (round 2): found a list in square brackets, expected text in double quotes");
        swap(
                "a letter that no stitch has",
                "bblbb",
                "bbxbb",
                ", line 12, rounds[1].repeat (round 2): no stitch has the letter 'x' (place 3); expected b, p, l or c");
        swap(
                "a capital letter",
                "bblbb",
                "bbLbb",
                ", line 12, rounds[1].repeat (round 2): no stitch has the letter 'L' (place 3); expected b, p, l or c");
        swap(
                "a blank between stitches",
                "bblbb",
                "bb lbb",
                ", line 12, rounds[1].repeat (round 2): no stitch has the letter ' ' (place 3); expected b, p, l or c");
        swap(
                "a line break behind the stitches",
                "bblbb",
                "bblbb\\n",
                ", line 12, rounds[1].repeat (round 2): no stitch has the letter '\ufffd' (place 6); expected b, p, l or c");
        swap(
                "an empty section in round 1",
                "\"bbb\"",
                "\"\"",
                ", line 11, rounds[0].fromCorner (round 1): found 0, expected 1 to 2000");
        swap(
                "too many stitches in round 1",
                "\"bbb\"",
                "\"" + "b".repeat(2_001) + "\"",
                ", line 11, rounds[0].fromCorner (round 1): found 2001, expected 1 to 2000");
    }

    private static String tooManyYarns() {
        StringBuilder more = new StringBuilder();
        for (int i = 1; i <= 63; i++) {
            more.append("{\"id\":\"").append(i).append("\",\"name\":\"\",\"colour\":\"#000000\"},");
        }
        return SOUND.replace("\"yarns\": [", "\"yarns\": [" + more);
    }

    /** A file that nobody may read, not even an administrator, whom ordinary permissions do not stop. */
    private static Path forbidden(Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("closed.border.json"), SOUND);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        return Files.isReadable(file) ? Path.of("/proc/sys/vm/compact_memory") : file;
    }

    private static String before(String piece) {
        return SOUND.substring(0, SOUND.indexOf(piece));
    }

    private void cut(String name, String text, int line, String expected) {
        text(name, text, ", line " + line + ": the file ends too early; expected " + expected);
    }

    private void swap(String name, String piece, String other, String sentence) {
        if (!SOUND.contains(piece)) {
            throw new IllegalArgumentException("the sound chart has no " + piece);
        }
        text(
                name,
                SOUND.replaceFirst(
                        java.util.regex.Pattern.quote(piece), java.util.regex.Matcher.quoteReplacement(other)),
                sentence);
    }

    private void text(String name, String text, String sentence) {
        bytes(name, text.getBytes(UTF_8), sentence);
    }

    private void bytes(String name, byte[] bytes, String sentence) {
        made(name, folder -> Files.write(folder.resolve("broken.border.json"), bytes), sentence);
    }

    private void made(String name, Maker maker, String sentence) {
        all.add(new BrokenChart(name, maker, sentence));
    }

    private void sizes() {
        size(
                "a size without a name",
                "{ \"repeats\": [9] }",
                "[0].name: the member is missing; expected text in double quotes");
        size(
                "a size whose name is blank",
                "{ \"name\": \" \", \"repeats\": [9] }",
                "[0].name: the size has no name; expected one that is not blank");
        size(
                "two sizes of one name",
                "{ \"name\": \"Lap\", \"repeats\": [9] }, { \"name\": \"Lap \", \"repeats\": [12] }",
                "[1].name: the name 'Lap ' belongs to another size already; expected one of its own");
        size(
                "a size without numbers",
                "{ \"name\": \"Lap\" }",
                "[0]: the size has no numbers; expected repeats or sides");
        size(
                "a size in repeats and in stitches",
                "{ \"name\": \"Lap\", \"repeats\": [9], \"sides\": [50] }",
                "[0]: the size has both; expected repeats or sides, one of them");
        size(
                "three numbers for four sides",
                "{ \"name\": \"Lap\", \"repeats\": [9, 7, 9] }",
                "[0].repeats: found 3, expected 1 to 2");
        size("no number for a side", "{ \"name\": \"Lap\", \"repeats\": [] }", "[0].repeats: found 0, expected 1 to 2");
        size(
                "a side that does not come out even",
                "{ \"name\": \"Lap\", \"sides\": [45, 52] }",
                "[0].sides[1]: a side of 52 stitches does not come out even; expected 50 or 55");
        size(
                "a side of fewer stitches than the corners have",
                "{ \"name\": \"Lap\", \"sides\": [3] }",
                "[0].sides[0]: a side of 3 stitches does not come out even; expected 5");
        size(
                "nine sizes",
                IntStream.rangeClosed(1, 9)
                        .mapToObj(i -> "{ \"name\": \"" + i + "\", \"repeats\": [" + i + "] }")
                        .collect(Collectors.joining(", ")),
                ": found 9, expected 0 to 8");
        piece(
                "a piece of three sides",
                "\"front\": [{ \"round\": 0, \"sides\": [103, 131, 103] }]",
                "front[0].sides: found 3, expected 4");
        piece(
                "a piece with more stitches on a side than any blanket has",
                "\"front\": [{ \"round\": 0, \"sides\": [103, 131, 103, 10001] }]",
                "front[0].sides[3]: found 10001, expected a whole number from 0 to 10,000");
        piece(
                "a piece that was counted in no round",
                "\"front\": [{ \"sides\": [103, 131, 103, 131] }]",
                "front[0].round: the member is missing; expected a whole number");
        piece(
                "a piece that was counted twice in one round",
                "\"front\": [{ \"round\": 2, \"sides\": [103, 131, 103, 131] }, { \"round\": 2, \"sides\": [1, 1, 1, 1] }]",
                "front: round 2 is counted twice; expected each round once");
        piece(
                "a base round of the back layer",
                "\"back\": [{ \"round\": 0, \"sides\": [103, 131, 103, 131] }]",
                "back[0].round: found 0, expected a whole number from 1 to 2000");
        member(
                "a piece as a list",
                "\"piece\": [103, 131]",
                ", line 4, piece: found a list in square brackets, expected an object in braces");
        member(
                "a join that is none",
                "\"technique\": { \"join\": \"knot\" }",
                ", line 4, technique.join: found 'knot', expected chain, slip or standing");
    }

    private void matter() {
        member(
                "a photograph without words for it",
                "\"photos\": [{ \"file\": \"reed.jpg\" }]",
                ", line 4, photos[0].alt: the member is missing; expected text in double quotes");
        member(
                "a photograph with blank words for it",
                "\"photos\": [{ \"file\": \"reed.jpg\", \"alt\": \" \" }]",
                ", line 4, photos[0].alt: expected words, 20,000 characters at most");
        member(
                "a photograph without a file",
                "\"photos\": [{ \"alt\": \"Reeds\" }]",
                ", line 4, photos[0].file: the member is missing; expected text in double quotes");
        member(
                "a photograph at a place that no pattern has",
                "\"photos\": [{ \"file\": \"reed.jpg\", \"alt\": \"Reeds\", \"at\": \"back\" }]",
                ", line 4, photos[0].at: found 'back', expected cover, gallery, stitches, start, joining or finishing");
        member(
                "seventeen photographs",
                "\"photos\": ["
                        + "{ \"file\": \"reed.jpg\", \"alt\": \"Reeds\" }, ".repeat(16)
                        + "{ \"file\": \"reed.jpg\", \"alt\": \"Reeds\" }]",
                ", line 4, photos: found 17, expected 0 to 16");
        member(
                "a section without a text",
                "\"sections\": [{ \"title\": \"Care\", \"text\": \"\" }]",
                ", line 4, sections[0].text: expected words, 20,000 characters at most");
        member(
                "a section with a very long text",
                "\"sections\": [{ \"title\": \"Care\", \"text\": \"" + "w".repeat(20_001) + "\" }]",
                ", line 4, sections[0].text: expected words, 20,000 characters at most");
        member(
                "an imprint in the chart itself",
                "\"imprint\": { \"name\": \"Saltmarsh Studio\" }",
                ", line 4, imprint: found an object in braces, expected text in double quotes");
    }

    private void piece(String name, String layers, String sentence) {
        member(name, "\"piece\": { " + layers + " }", ", line 4, piece." + sentence);
    }

    private void size(String name, String sizes, String sentence) {
        member(name, "\"sizes\": [" + sizes + "]", ", line 4, sizes" + sentence);
    }

    private void making() {
        member("a hook of no size", "\"hook\": 0", ", line 4, hook: found 0, expected a number from 0.01 to 1000000");
        member("a hook as a text", "\"hook\": \"G\"", ", line 4, hook: found text in double quotes, expected a number");
        member(
                "half a swatch",
                "\"swatch\": { \"rounds\": 18 }",
                ", line 4, swatch.stitches: the member is missing; expected a number");
        member(
                "a start on no side",
                "\"start\": { \"odd\": \"up\" }",
                ", line 4, start.odd: found 'up', expected top, left, bottom or right");
        member(
                "a start past the first repeat",
                "\"start\": { \"column\": 8 }",
                ", line 4, start.column: found 8, expected a column from 1 to 7, which is the end of the first repeat");
        sizes();
        matter();
        member(
                "a yarn weight that is none",
                "\"yarnWeight\": 8",
                ", line 4, yarnWeight: found 8, expected a whole number from 0 to 7");
        swap(
                "a ball without a weight",
                "\"#2b2a33\"",
                "\"#2b2a33\", \"ball\": { \"metres\": 160 }",
                ", line 7, yarns[0].ball.grams: the member is missing; expected a number");
        swap(
                "less than no yarn",
                "\"#2b2a33\"",
                "\"#2b2a33\", \"inHand\": -1",
                ", line 7, yarns[0].inHand: found -1, expected a number from 0 to 1000000");
    }

    private void member(String name, String member, String sentence) {
        swap(name, "\"terms\"", member + ", \"terms\"", sentence);
    }
}
