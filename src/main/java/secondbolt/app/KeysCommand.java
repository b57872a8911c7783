package secondbolt.app;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import secondbolt.file.Form;
import secondbolt.file.Key;

/** Prints the reference of the project file. */
@Command(
        name = "keys",
        mixinStandardHelpOptions = true,
        description = {
            "Prints the keys of the project file: what each is for and how it is written.",
            ""
        })
final class KeysCommand implements Callable<Integer> {
    private final Workplace workplace;

    @Parameters(
            arity = "0..1",
            paramLabel = "SECTION",
            description =
                    "one section alone, such as cloth, or a file beside the project file, such as"
                            + " plan.yaml (default: the whole project file)")
    private String section;

    @Spec private CommandSpec spec;

    KeysCommand(Workplace workplace) {
        this.workplace = workplace;
    }

    @Override
    public Integer call() {
        List<Key<?>> all = Workplace.form().keys();
        if (section == null) {
            all.forEach(key -> print(key, 0));
            return Secondbolt.DONE;
        }
        Optional<Form<?>> file = Optional.ofNullable(Workplace.beside().get(section));
        if (file.isPresent()) {
            file.get().keys().forEach(key -> print(key, 0));
            return Secondbolt.DONE;
        }
        Optional<Key<?>> one = all.stream().filter(k -> k.name().equals(section)).findFirst();
        if (one.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "no section `"
                            + section
                            + "`; there are "
                            + String.join(", ", all.stream().map(Key::name).toList())
                            + "; and beside the project file "
                            + String.join(", ", Workplace.beside().keySet()));
        }
        print(one.get(), 0);
        return Secondbolt.DONE;
    }

    private void print(Key<?> key, int depth) {
        String indent = "    ".repeat(depth);
        String need =
                switch (key.need()) {
                    case REQUIRED -> " (must be written)";
                    case OPTIONAL -> "";
                    case LATER -> " (known, not worked out yet)";
                };
        workplace.out().println(indent + key.name() + need);
        workplace.out().println(indent + "  " + key.meaning());
        if (key.need() != Key.Need.LATER) {
            workplace.out().println(indent + "  written as: " + key.form().words());
            workplace.out().println(indent + "  example: " + key.name() + ": " + key.example());
        }
        key.form().keys().forEach(inside -> print(inside, depth + 1));
    }
}
