package edgewright.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.MutuallyExclusiveArgsException;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Why arguments make no command: the option or argument, what was found, what was expected. The library's own words are for
 * programmers and never used; what is wrong follows from the kind of its exception and from the arguments.
 */
final class UsageSentence {
    private final CommandSpec command;
    private final List<String> arguments;

    private UsageSentence(CommandSpec command, List<String> arguments) {
        this.command = command;
        this.arguments = arguments;
    }

    /**
     * The sentence for what the library found while it read the arguments.
     *
     * @param arguments all of them, the name of the command among them
     */
    static String of(ParameterException mistake, List<String> arguments) {
        CommandSpec command = mistake.getCommandLine().getCommandSpec();
        return CommandTexts.oneLine(new UsageSentence(command, arguments).of(mistake));
    }

    /** The sentence for what a command found when it looked at its options together: its own, or that of {@code help}. */
    static String ofRun(ParameterException mistake) {
        CommandSpec command = mistake.getCommandLine().getCommandSpec();
        boolean isOfHelp = mistake.getValue() != null;
        return CommandTexts.oneLine(
                isOfHelp ? new UsageSentence(command, List.of()).noSuchCommand(asked(mistake)) : mistake.getMessage());
    }

    private String of(ParameterException mistake) {
        if (mistake instanceof UnmatchedArgumentException unmatched) {
            String found = unmatched.getUnmatched().get(0);
            return unmatched(found, unmatched.isUnknownOption() && !isBehindDashes(found));
        }
        if (mistake instanceof MissingParameterException missing) {
            return missing(missing.getMissing());
        }
        if (mistake instanceof MutuallyExclusiveArgsException) {
            return CommandTexts.of("usage.together", String.join(", ", exclusives(command.argGroups())));
        }
        if (mistake instanceof OverwrittenOptionException twice) {
            return CommandTexts.of("usage.twice", name(twice.getOverwritten()));
        }
        if (mistake.getCause() instanceof TypeConversionException wrong && mistake.getArgSpec() != null) {
            return value(mistake.getArgSpec(), mistake.getValue(), wrong.getMessage());
        }
        return repeated()
                .map(option -> CommandTexts.of("usage.twice", name(option)))
                .orElseGet(() -> CommandTexts.of("usage.unclear", String.join(" ", arguments)));
    }

    private String unmatched(String found, boolean isOption) {
        if (isOption) {
            return CommandTexts.of("usage.noSuchOption", found, optionNames());
        }
        if (command.parent() == null) {
            return noSuchCommand(found);
        }
        return CommandTexts.of(
                "usage.more",
                found,
                command.positionalParameters().stream().map(ArgSpec::paramLabel).collect(Collectors.joining(", ")));
    }

    private static String value(ArgSpec spec, String found, String wrong) {
        return spec.arity().max() == 0
                ? CommandTexts.of("usage.noValueWanted", name(spec), found)
                : CommandTexts.of("usage.value", name(spec), wrong);
    }

    private String noSuchCommand(String found) {
        return CommandTexts.of(
                "no.such.command",
                found,
                String.join(", ", command.root().subcommands().keySet()));
    }

    private String optionNames() {
        return command.options().stream()
                .filter(option -> !option.hidden())
                .map(UsageSentence::name)
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
    }

    /** Of options that need a value, one that stands there without it is told first. */
    private String missing(List<ArgSpec> missing) {
        Optional<ArgSpec> withoutValue =
                missing.stream().filter(this::isStatedWithoutValue).findFirst();
        if (withoutValue.isPresent()) {
            ArgSpec option = withoutValue.get();
            return after(option)
                    .map(next -> CommandTexts.of("usage.optionForValue", name(option), next, option.paramLabel()))
                    .orElseGet(() -> CommandTexts.of("usage.noValue", name(option), option.paramLabel()));
        }
        List<String> wanted = missing.stream()
                // Of options that need each other the library names those that are there too.
                .filter(spec -> !isStated(spec))
                .sorted(Comparator.comparing(ArgSpec::isOption))
                .map(spec -> CommandTexts.of("usage.no", named(spec)))
                .distinct()
                .toList();
        return CommandTexts.of("usage.missing", String.join(", ", wanted), wanted.size());
    }

    /** The options of one group that stand there together although they exclude each other. */
    private List<String> exclusives(List<ArgGroupSpec> groups) {
        return groups.stream()
                .flatMap(group -> {
                    List<String> stated = group.exclusive()
                            ? group.allOptionsNested().stream()
                                    .filter(this::isStated)
                                    .map(UsageSentence::name)
                                    .toList()
                            : List.<String>of();
                    return stated.size() > 1 ? stated.stream() : exclusives(group.subgroups()).stream();
                })
                .toList();
    }

    /** An option that stands there more than once. */
    private Optional<OptionSpec> repeated() {
        return command.options().stream()
                .filter(option -> places(option).count() > 1)
                .findFirst();
    }

    /** Whether it stands behind the two dashes that end all options. */
    private boolean isBehindDashes(String argument) {
        int dashes = arguments.indexOf("--");
        return dashes >= 0 && dashes < arguments.lastIndexOf(argument);
    }

    private boolean isStated(ArgSpec spec) {
        return spec instanceof OptionSpec option && places(option).findAny().isPresent();
    }

    private boolean isStatedWithoutValue(ArgSpec spec) {
        return spec instanceof OptionSpec option
                && names(option).anyMatch(arguments::contains)
                && after(option)
                        .filter(next -> !command.optionsMap().containsKey(next))
                        .isEmpty();
    }

    /** The arguments that state this option, with or without a value behind an equals sign. */
    private Stream<String> places(OptionSpec option) {
        return arguments.stream()
                .filter(argument ->
                        names(option).anyMatch(name -> argument.equals(name) || argument.startsWith(name + "=")));
    }

    /** What follows an option that should have a value. */
    private Optional<String> after(ArgSpec spec) {
        int place =
                names((OptionSpec) spec).mapToInt(arguments::lastIndexOf).max().orElse(-1);
        return place < 0 || place + 1 == arguments.size() ? Optional.empty() : Optional.of(arguments.get(place + 1));
    }

    private static Stream<String> names(OptionSpec option) {
        return Stream.of(option.names());
    }

    private static String name(ArgSpec spec) {
        return spec instanceof OptionSpec option ? option.longestName() : spec.paramLabel();
    }

    /** An argument as it is to be typed. */
    private static String named(ArgSpec spec) {
        return spec instanceof OptionSpec option ? option.longestName() + " " + spec.paramLabel() : spec.paramLabel();
    }

    /** What {@code help} was asked about; the library gives a list as text. */
    private static String asked(ParameterException mistake) {
        return mistake.getValue().replaceAll("^\\[|]$", "");
    }
}
