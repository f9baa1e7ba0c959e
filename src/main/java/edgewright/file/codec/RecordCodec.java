package edgewright.file.codec;

import edgewright.chart.Extras;
import edgewright.file.fault.ChartFault;
import edgewright.file.fault.Problem;
import edgewright.file.fault.Problem.Shape;
import edgewright.file.json.JsonText;
import edgewright.file.json.RawJson;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * A record as an object in a file. A subclass states the members once, in the order in which they are written; they may be
 * read in any order. Members that it does not know are kept and written back behind the others.
 */
abstract class RecordCodec<R> implements Codec<R> {
    private final Map<String, Member<R, ?>> members = new LinkedHashMap<>();

    /** A member that every such object has. */
    final <T> Member<R, T> required(String name, Codec<T> codec, Function<R, T> of) {
        return add(new Member<>(name, codec, Optional.empty(), true, of));
    }

    /** A member that may be left out for the usual value, and is always written. */
    final <T> Member<R, T> usual(String name, Codec<T> codec, T usual, Function<R, T> of) {
        return add(new Member<>(name, codec, Optional.of(usual), true, of));
    }

    /** A member that may be left out, and is where it would say nothing. */
    final <T> Member<R, T> optional(String name, Codec<T> codec, T nothing, Function<R, T> of) {
        return add(new Member<>(name, codec, Optional.of(nothing), false, of));
    }

    private <T> Member<R, T> add(Member<R, T> member) {
        members.put(member.name(), member);
        return member;
    }

    /** The record of an object in which every required member was found and right. */
    abstract R make(FoundMembers found);

    /** The members of the record that are not known. */
    abstract Extras extras(R record);

    @Override
    public Optional<R> read(Reading in) {
        return readMembers(in)
                .filter(found -> members.values().stream()
                        .allMatch(member -> found.find(member).isPresent()))
                .map(this::make);
    }

    /** The members of the object that the reading stands on; a problem is noted for each required one that is not there. */
    final Optional<FoundMembers> readMembers(Reading in) {
        if (!in.standsOn(Shape.OBJECT)) {
            return Optional.empty();
        }
        int line = in.json().line();
        String path = in.json().path();
        Set<String> names = new HashSet<>();
        FoundMembers found = new FoundMembers();
        in.json().object(name -> {
            names.add(name);
            Member<R, ?> member = members.get(name);
            if (member == null) {
                found.keep(name, kept(in.json().raw()));
            } else {
                found.take(member, in);
            }
        });
        for (Member<R, ?> member : members.values()) {
            if (member.isRequired() && !names.contains(member.name())) {
                String place = path.isEmpty() ? member.name() : path + "." + member.name();
                in.note(Problem.atMember(
                        new ChartFault.Missing(member.codec().form().shape()), line, place));
            }
        }
        return Optional.of(found);
    }

    /** How the text of an unknown member is kept: in one line, as the object will be. */
    String kept(String raw) {
        return RawJson.inOneLine(raw);
    }

    /** The object in one line. */
    @Override
    public String write(R record) {
        List<String> written = new ArrayList<>();
        members.values().forEach(member -> member.written(record).ifPresent(json -> written.add(member(member, json))));
        extras(record).json().forEach((name, json) -> written.add(JsonText.member(name, json)));
        return written.isEmpty() ? "{}" : "{ " + String.join(", ", written) + " }";
    }

    private static String member(Member<?, ?> member, String json) {
        return JsonText.member(member.name(), json);
    }

    @Override
    public ValueSchema form() {
        return new ValueSchema.Members(List.copyOf(members.values()));
    }

    /** The members in the order in which they are written. */
    final List<Member<R, ?>> members() {
        return List.copyOf(members.values());
    }
}
