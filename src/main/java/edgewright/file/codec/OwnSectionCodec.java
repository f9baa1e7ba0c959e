package edgewright.file.codec;

import edgewright.chart.Extras;
import edgewright.chart.OwnSection;

/** A text of the designer's own. */
final class OwnSectionCodec extends RecordCodec<OwnSection> {
    private final Member<OwnSection, String> title = required("title", ValueCodecs.WORDS, OwnSection::title);
    private final Member<OwnSection, String> text = required("text", ValueCodecs.WORDS, OwnSection::text);

    @Override
    OwnSection make(FoundMembers found) {
        return new OwnSection(found.get(title), found.get(text), found.extras());
    }

    @Override
    Extras extras(OwnSection section) {
        return section.extras();
    }
}
