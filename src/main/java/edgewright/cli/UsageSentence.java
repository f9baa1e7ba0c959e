package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.commas;
import static edgewright.texts.Arg.count;

import edgewright.texts.Messages;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
    private final Messages says;

    private UsageSentence(CommandSpec command, List<String> arguments, Messages says) {
        this.command = command;
        this.arguments = arguments;
        this.says = says;
    }

    /**
     * The sentence for what the library found while it read the arguments.
     *
     * @param arguments all of them, the name of the command among them
     */
    static String of(ParameterException mistake, List<String> arguments, Messages says) {
        CommandSpec command = mistake.getCommandLine().getCommandSpec();
        return ScreenText.oneLine(new UsageSentence(command, arguments, says).of(mistake));
    }

    /** The sentence for what a command found when it looked at its options together: its own, or that of {@code help}. */
    static String ofRun(ParameterException mistake, Messages says) {
        CommandSpec command = mistake.getCommandLine().getCommandSpec();
        boolean isOfHelp = mistake.getValue() != null;
        return ScreenText.oneLine(
                isOfHelp
                        ? new UsageSentence(command, List.of(), says).noSuchCommand(asked(mistake))
                        : mistake.getMessage());
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
            return says.text("usage-together", commas("options", exclusives(command.argGroups())));
        }
        if (mistake instanceof OverwrittenOptionException twice) {
            return says.text("usage-twice", arg("option", name(twice.getOverwritten())));
        }
        if (mistake.getCause() instanceof TypeConversionException wrong && mistake.getArgSpec() != null) {
            return value(mistake.getArgSpec(), mistake.getValue(), wrong.getMessage());
        }
        return repeated()
                .map(option -> says.text("usage-twice", arg("option", name(option))))
                .orElseGet(() -> says.text("usage-unclear", arg("found", String.join(" ", arguments))));
    }

    private String unmatched(String found, boolean isOption) {
        if (isOption) {
            return says.text("usage-noSuchOption", arg("found", found), commas("options", optionNames()));
        }
        if (command.parent() == null) {
            return noSuchCommand(found);
        }
        return says.text(
                "usage-more",
                arg("found", found),
                commas(
                        "before",
                        command.positionalParameters().stream()
                                .map(ArgSpec::paramLabel)
                                .toList()));
    }

    private String value(ArgSpec spec, String found, String wrong) {
        return spec.arity().max() == 0
                ? says.text("usage-noValueWanted", arg("option", name(spec)), arg("found", found))
                : says.text("usage-value", arg("option", name(spec)), arg("mistake", wrong));
    }

    private String noSuchCommand(String found) {
        return says.text(
                "no-such-command",
                arg("found", found),
                commas("commands", List.copyOf(command.root().subcommands().keySet())));
    }

    private List<String> optionNames() {
        return command.options().stream()
                .filter(option -> !option.hidden())
                .map(UsageSentence::name)
                .distinct()
                .sorted()
                .toList();
    }

    /** Of options that need a value, one that stands there without it is told first. */
    private String missing(List<ArgSpec> missing) {
        Optional<ArgSpec> withoutValue =
                missing.stream().filter(this::isStatedWithoutValue).findFirst();
        if (withoutValue.isPresent()) {
            ArgSpec option = withoutValue.get();
            return after(option)
                    .map(next -> says.text(
                            "usage-optionForValue",
                            arg("option", name(option)),
                            arg("found", next),
                            arg("value", option.paramLabel())))
                    .orElseGet(() ->
                            says.text("usage-noValue", arg("option", name(option)), arg("value", option.paramLabel())));
        }
        List<String> wanted = missing.stream()
                // Of options that need each other the library names those that are there too.
                .filter(spec -> !isStated(spec))
                .sorted(Comparator.comparing(ArgSpec::isOption))
                .map(spec -> says.text("usage-no", arg("option", named(spec))))
                .distinct()
                .toList();
        return says.text("usage-missing", commas("missing", wanted), count("count", wanted.size()));
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
