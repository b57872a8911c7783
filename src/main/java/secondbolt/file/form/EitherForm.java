package secondbolt.file.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Reading;
import secondbolt.file.source.Node;
import secondbolt.measure.Tape;

/**
 * One of several forms: the last one listed that suits what is written reads it, so that special
 * words listed after a general text win.
 *
 * @param forms the general ones first
 */
record EitherForm<T>(List<Form<T>> forms) implements Form<T> {
    EitherForm {
        forms = List.copyOf(forms);
    }

    static <T> Form<T> of(Form<T> general, Form<T> special) {
        return new EitherForm<>(List.of(general, special));
    }

    @Override
    public Optional<T> read(Node node, Reading reading) {
        for (int i = forms.size() - 1; i >= 0; i--) {
            if (forms.get(i).suits(node)) {
                return forms.get(i).read(node, reading);
            }
        }
        reading.tellKind(node, this);
        return Optional.empty();
    }

    @Override
    public boolean suits(Node node) {
        return forms.stream().anyMatch(form -> form.suits(node));
    }

    @Override
    public boolean mayBeNone() {
        return forms.stream().allMatch(Form::mayBeNone);
    }

    @Override
    public String words() {
        return forms.stream().map(Form::words).collect(Collectors.joining("; or "));
    }

    @Override
    public String words(Tape tape) {
        return forms.stream().map(f -> f.words(tape)).collect(Collectors.joining("; or "));
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("anyOf", forms.stream().<Object>map(Form::schema).toList());
        return schema;
    }

    @Override
    public List<Key<?>> keys() {
        List<Key<?>> keys = new ArrayList<>();
        forms.forEach(form -> keys.addAll(form.keys()));
        return List.copyOf(keys);
    }
}
