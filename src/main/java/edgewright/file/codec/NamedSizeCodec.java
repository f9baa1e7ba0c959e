package edgewright.file.codec;

import edgewright.chart.CleanText;
import edgewright.chart.Extras;
import edgewright.chart.NamedSize;
import edgewright.chart.NamedSize.Unit;
import edgewright.chart.PerSide;
import edgewright.file.fault.ChartFault;
import edgewright.file.fault.Problem;
import java.util.List;
import java.util.Optional;

/** A size for which the pattern is written: its name, and repeats or stitches of the base round. */
final class NamedSizeCodec extends RecordCodec<NamedSize> {
    /** A name, which no size before it may have. */
    private static final Codec<String> NAME = ValueCodecs.text(0, Integer.MAX_VALUE, (text, in) -> {
        if (CleanText.oneLine(text).isEmpty()) {
            in.note(new ChartFault.NoName());
            return Optional.empty();
        }
        if (!in.links().sizeHas(CleanText.oneLine(text))) {
            in.note(new ChartFault.SameName(text));
            return Optional.empty();
        }
        return Optional.of(text);
    });

    private static final Codec<Integer> NUMBER = ValueCodecs.whole(0, NamedSize.MOST_OF_A_SIDE);

    /** Stitches of the base round, which are held against round 1 when that has been read. */
    private static final Codec<Integer> STITCHES = ValueCodecs.of(
            NUMBER.form(),
            in -> {
                Optional<Integer> stitches = NUMBER.read(in);
                stitches.ifPresent(number -> in.links().sideHas(number, in.json()));
                return stitches;
            },
            NUMBER::write);

    private final Member<NamedSize, String> name = required("name", NAME, NamedSize::name);
    private final Member<NamedSize, Optional<PerSide<Integer>>> repeats = numbers("repeats", NUMBER, Unit.REPEATS);
    private final Member<NamedSize, Optional<PerSide<Integer>>> sides = numbers("sides", STITCHES, Unit.STITCHES);

    private Member<NamedSize, Optional<PerSide<Integer>>> numbers(String member, Codec<Integer> number, Unit unit) {
        return optional(
                member,
                new Sides(number)
                        .as(list -> PerSide.pairs(list.get(0), list.get(list.size() - 1)), NamedSizeCodec::listed)
                        .orNone(),
                Optional.empty(),
                size -> Optional.of(size.numbers()).filter(numbers -> size.unit() == unit));
    }

    /** One number for all sides, or one for top and bottom and one for left and right. */
    private static List<Integer> listed(PerSide<Integer> numbers) {
        return numbers.allSidesAreAlike() ? List.of(numbers.top()) : List.of(numbers.top(), numbers.left());
    }

    private static final class Sides extends ListCodec.InOneLine<Integer> {
        Sides(Codec<Integer> number) {
            super(number, 1, 2);
        }

        /** Without a number there are no sides; that one is missing or wrong has been noted. */
        @Override
        public Optional<List<Integer>> read(Reading in) {
            return super.read(in).filter(numbers -> !numbers.isEmpty());
        }
    }

    @Override
    public Optional<NamedSize> read(Reading in) {
        int line = in.json().line();
        String path = in.json().path();
        return readMembers(in).flatMap(found -> {
            boolean both = hasNumbers(found, repeats) && hasNumbers(found, sides);
            boolean none = !hasNumbers(found, repeats) && !hasNumbers(found, sides);
            if (both || (none && !isWrong(path, repeats, in) && !isWrong(path, sides, in))) {
                ChartFault fault = new ChartFault.NotOneOf(both, List.of(repeats.name(), sides.name()));
                in.note(Problem.atMember(fault, line, path));
            }
            return both || none || found.find(name).isEmpty() ? Optional.empty() : Optional.of(make(found));
        });
    }

    private static boolean hasNumbers(FoundMembers found, Member<NamedSize, Optional<PerSide<Integer>>> member) {
        return found.find(member).flatMap(numbers -> numbers).isPresent();
    }

    /** Whether something was noted of this member of the object, so that it is there. */
    private static boolean isWrong(String path, Member<NamedSize, ?> member, Reading in) {
        return in.problems().stream()
                .flatMap(problem -> problem.member().stream())
                .anyMatch(place -> place.startsWith(path + "." + member.name()));
    }

    @Override
    NamedSize make(FoundMembers found) {
        return found.get(repeats)
                .map(each -> new NamedSize(found.get(name), Unit.REPEATS, each, found.extras()))
                .orElseGet(() -> new NamedSize(
                        found.get(name), Unit.STITCHES, found.get(sides).orElseThrow(), found.extras()));
    }

    @Override
    Extras extras(NamedSize size) {
        return size.extras();
    }
}
