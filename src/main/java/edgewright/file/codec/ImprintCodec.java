package edgewright.file.codec;

import edgewright.chart.Colour;
import edgewright.chart.Extras;
import edgewright.chart.Imprint;
import edgewright.chart.OwnSection;
import edgewright.file.fault.ChartFault;
import edgewright.file.fault.Problem;
import edgewright.file.json.JsonText;
import edgewright.file.json.RawJson;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An imprint, which is a file of its own. */
public final class ImprintCodec extends RecordCodec<Imprint> {
    /** What the member {@code format} of every imprint file says. */
    public static final String FORMAT = "edgewright-imprint";

    /** The version that is written, and the newest that is read. */
    private static final int VERSION = 1;

    private static final FileVersion FILE = new FileVersion(FORMAT, VERSION);

    private static final Codec<String> WEB = ValueCodecs.text(0, Integer.MAX_VALUE, (text, in) -> {
        if (!text.isEmpty() && !Imprint.isWebAddress(text)) {
            in.note(new ChartFault.NotAWebAddress(text));
            return Optional.empty();
        }
        return Optional.of(text);
    });

    private static final Codec<String> USE = ValueCodecs.text(0, Integer.MAX_VALUE, (text, in) -> {
        if (text.length() > OwnSection.LONGEST) {
            in.note(new ChartFault.NoWords(OwnSection.LONGEST));
            return Optional.empty();
        }
        return Optional.of(text);
    });

    private final Member<Imprint, String> format = required("format", FILE.formatCodec(), imprint -> FORMAT);

    {
        // It is judged while it is read, and nobody asks for it afterwards.
        required("version", FILE.versionCodec(), imprint -> VERSION);
    }

    private final Member<Imprint, String> name = required("name", ValueCodecs.WORDS, Imprint::name);
    private final Member<Imprint, String> contact = usual("contact", ValueCodecs.TEXT, "", Imprint::contact);
    private final Member<Imprint, String> web = usual("web", WEB, "", Imprint::web);
    private final Member<Imprint, String> copyright = usual("copyright", ValueCodecs.TEXT, "", Imprint::copyright);
    private final Member<Imprint, String> use = usual("use", USE, "", Imprint::use);
    private final Member<Imprint, String> logo = optional("logo", ValueCodecs.TEXT, "", Imprint::logo);
    private final Member<Imprint, Optional<Colour>> accent =
            optional("accent", YarnCodec.COLOUR.orNone(), Optional.empty(), Imprint::accent);

    /**
     * The imprint of the object that the reading stands on, which must be all that the text holds.
     *
     * @return empty if something is wrong; what it is stands in the reading
     */
    Optional<Imprint> readAlone(Reading in) {
        FoundMembers found = readMembers(in).orElseThrow();
        in.json().end();
        if (!found.find(format).equals(Optional.of(FORMAT))) {
            in.noteOnly(Problem.ofFile(new ChartFault.NotAnImprint(FORMAT)));
        }
        return in.problems().isEmpty() ? Optional.of(make(found)) : Optional.empty();
    }

    @Override
    Imprint make(FoundMembers found) {
        return new Imprint(
                found.get(name),
                found.get(contact),
                found.get(web),
                found.get(copyright),
                found.get(use),
                found.get(logo),
                found.get(accent),
                found.extras());
    }

    @Override
    Extras extras(Imprint imprint) {
        return imprint.extras();
    }

    @Override
    String kept(String raw) {
        return RawJson.inLines(raw);
    }

    /** The whole text, a member a line, each line ended by a line feed. */
    @Override
    public String write(Imprint imprint) {
        List<String> lines = new ArrayList<>();
        members()
                .forEach(member ->
                        member.written(imprint).ifPresent(json -> lines.add(JsonText.member(member.name(), json))));
        imprint.extras().json().forEach((member, json) -> lines.add(JsonText.member(member, json)));
        return "{\n  " + String.join(",\n  ", lines) + "\n}\n";
    }
}
