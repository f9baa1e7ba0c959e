package edgewright.file.codec;

import edgewright.chart.Extras;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What one object of a file was found to hold. */
final class FoundMembers {
    private final Map<Member<?, ?>, Object> values = new HashMap<>();
    private final Map<String, String> unknown = new LinkedHashMap<>();

    /** Takes the value of a member that the reading stands on. A value that is wrong counts as none; that was noted. */
    <T> void take(Member<?, T> member, Reading in) {
        member.codec().read(in).ifPresent(value -> values.put(member, value));
    }

    /** Keeps a member that is not known, as JSON text. */
    void keep(String name, String json) {
        unknown.put(name, json);
    }

    /** The value of a member, or what its absence stands for; empty if it must be there and is not, or is wrong. */
    @SuppressWarnings("unchecked") // only 'take' puts values in, each under the member whose codec made it
    <T> Optional<T> find(Member<?, T> member) {
        T value = (T) values.get(member);
        return value == null ? member.ifAbsent() : Optional.of(value);
    }

    /** The same of a member that is known to be there. */
    <T> T get(Member<?, T> member) {
        return find(member).orElseThrow();
    }

    /** The members that are not known. */
    Extras extras() {
        return new Extras(unknown);
    }
}
