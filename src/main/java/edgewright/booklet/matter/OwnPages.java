package edgewright.booklet.matter;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.own.PrintedMatter;
import edgewright.booklet.own.PrintedPhoto;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.chart.Chart;
import edgewright.chart.OwnSection;
import edgewright.chart.Photo;
import edgewright.words.own.OwnText;
import edgewright.words.page.PatternPart;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All that a designer adds to a printed pattern, in the places where it belongs: the cover photograph and the imprint on the
 * first page, the first section before the pattern, photographs beside parts of it, then the other sections and the gallery.
 */
public final class OwnPages {
    /** Two photographs of the gallery share a page, each in the middle, so that an odd one stands well too. */
    private static final double GALLERY_SHARE = 0.4;

    private static final double BESIDE_SHARE = 0.28;

    private final TextSetter setter;
    private final PageLayout sheet;
    private final List<OwnSection> sections;
    private final PrintedMatter matter;
    private final Edition edition;
    private final PhotoSetter photos;
    private final Set<Photo.At> shown = EnumSet.noneOf(Photo.At.class);

    public OwnPages(TextSetter setter, Chart chart, BookletOptions options) {
        this.setter = setter;
        this.sheet = setter.sheet();
        this.sections = chart.own().sections();
        this.matter = options.matter();
        this.edition = options.edition();
        this.photos = new PhotoSetter(setter, edition);
    }

    /** The photograph of the first page, at most that high with its caption; empty if there is none. */
    public Optional<List<ColumnSlice>> cover(Tag root, double roomPt) {
        return matter.cover().map(photo -> {
            double caption = photo.photo().caption().isEmpty() ? 0 : 2 * sheet.linePt();
            return OwnTextSetter.spaced(
                    photos.set(root, photo, 0, sheet.widthPt(), roomPt - caption, true), sheet.linePt());
        });
    }

    /** The imprint; nothing if there is none. */
    public List<ColumnSlice> imprint(Tag root) {
        return matter.imprint()
                .map(imprint -> OwnTextSetter.spaced(
                        new ImprintSetter(setter, photos).set(root, imprint), 1.5 * sheet.linePt()))
                .orElse(List.of());
    }

    /** What stands before the pattern: the first section. */
    public List<ColumnSlice> opening(Tag root) {
        return sections.isEmpty() ? List.of() : section(root, sections.get(0));
    }

    /** A part is set once more, to stand in another place instead, and shows the same photographs there. */
    public void again(PatternPart.Kind part) {
        places(part).forEach(shown::remove);
    }

    /**
     * The photographs beside a part of the pattern that was just set; of several such parts only the first has them.
     *
     * @param by what the part was set by, in a column or across the page
     */
    public List<ColumnSlice> beside(PatternPart.Kind part, Tag section, TextSetter by) {
        PageLayout column = by.sheet();
        PhotoSetter inColumn = new PhotoSetter(by, edition);
        List<ColumnSlice> strips = new ArrayList<>();
        for (Photo.At place : places(part)) {
            if (shown.add(place)) {
                for (PrintedPhoto photo : matter.at(place)) {
                    strips.addAll(OwnTextSetter.spaced(
                            inColumn.set(
                                    section,
                                    photo,
                                    column.labelPt(),
                                    column.textPt(),
                                    BESIDE_SHARE * column.heightPt(),
                                    false),
                            column.linePt()));
                }
            }
        }
        return strips;
    }

    /** What stands after the pattern: all other sections, then the gallery, with photographs whose part was not set. */
    public List<ColumnSlice> closing(Tag root) {
        List<ColumnSlice> strips = new ArrayList<>();
        sections.stream().skip(1).forEach(section -> strips.addAll(section(root, section)));
        List<PrintedPhoto> gallery = new ArrayList<>(matter.gallery());
        for (Photo.At place : EnumSet.range(Photo.At.STITCHES, Photo.At.FINISHING)) {
            gallery.addAll(shown.contains(place) ? List.of() : matter.at(place));
        }
        if (!gallery.isEmpty()) {
            strips.addAll(gallery(root.child(StructureRole.SECTION), gallery));
        }
        return strips;
    }

    private List<ColumnSlice> gallery(Tag section, List<PrintedPhoto> gallery) {
        List<ColumnSlice> strips = new ArrayList<>(
                setter.partHeading(section, new Anchor(setter.says().text("own-gallery"), 1)));
        for (int i = 0; i < gallery.size(); i++) {
            List<ColumnSlice> photo =
                    photos.set(section, gallery.get(i), 0, sheet.widthPt(), GALLERY_SHARE * sheet.heightPt(), true);
            strips.addAll(i == 0 ? photo : OwnTextSetter.spaced(photo, sheet.linePt()));
        }
        return strips;
    }

    private List<ColumnSlice> section(Tag root, OwnSection section) {
        Tag tag = root.child(StructureRole.SECTION);
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(tag, new Anchor(section.title(), 1)));
        strips.addAll(new OwnTextSetter(setter).set(tag, OwnText.of(section.text())));
        return strips;
    }

    /** The places of photographs that lie beside a part. */
    static List<Photo.At> places(PatternPart.Kind part) {
        return switch (part) {
            case ABBREVIATIONS -> List.of(Photo.At.STITCHES);
            case SET_UP -> List.of(Photo.At.START);
            case JOINING -> List.of(Photo.At.JOINING);
            case FINISHING -> List.of(Photo.At.FINISHING);
            default -> List.of();
        };
    }
}
