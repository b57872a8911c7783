package secondbolt.notebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import secondbolt.file.json.Json;
import secondbolt.notebook.paper.PaperChoice;
import secondbolt.project.Workings;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Term;
import secondbolt.worksheet.Worksheet;

/** All that a project's sheets show, as JSON for other programs. */
final class WorkingsFile {
    /** Stands where a project holds what is known of a body. */
    static final String PERSONAL = "personal";

    private WorkingsFile() {}

    static String write(
            String version, Workings project, List<PrintedSheet> sheets, PaperChoice paper) {
        List<Object> findings = new ArrayList<>();
        List<Object> assumed = new ArrayList<>();
        List<Object> open = new ArrayList<>();
        Map<String, Object> figures = new LinkedHashMap<>();
        paper.assumed().ifPresent(value -> assumed.add(assumed(value)));
        for (Worksheet worksheet : project.worksheets()) {
            worksheet.findings().forEach(f -> findings.add(finding(worksheet, f)));
            worksheet.assumed().forEach(value -> assumed.add(assumed(value)));
            worksheet.open().forEach(value -> open.add(open(value)));
            figures.put(worksheet.name(), worksheet.figures().asMap());
        }
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("secondbolt", version);
        all.put("title", project.heading().title());
        all.put("summary", project.heading().summary().orElse(""));
        if (project.isPersonal()) {
            all.put(PERSONAL, true);
        }
        all.put("units", project.heading().units().symbol());
        all.put("sheets", sheets.stream().<Object>map(WorkingsFile::sheet).toList());
        all.put("findings", findings);
        all.put("assumed", assumed);
        all.put("open", open);
        figures.forEach((name, value) -> putNew(all, name, value));
        putGathered(all, project);
        return Json.write(all);
    }

    /** What the topics contribute to others, where they do. */
    private static void putGathered(Map<String, Object> all, Workings project) {
        if (!project.terms().isEmpty()) {
            putNew(all, "words", project.terms().stream().map(WorkingsFile::term).toList());
        }
    }

    private static Map<String, Object> term(Term term) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("word", term.word());
        json.put("meaning", term.meaning());
        return json;
    }

    private static void putNew(Map<String, Object> all, String name, Object value) {
        if (all.putIfAbsent(name, value) != null) {
            throw new IllegalArgumentException("a worksheet may not be called " + name);
        }
    }

    private static Map<String, Object> sheet(PrintedSheet sheet) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("name", sheet.sheet().name());
        json.put("code", sheet.code().text());
        json.put("pages", sheet.pages().size());
        json.put("file", sheet.file());
        return json;
    }

    private static Map<String, Object> finding(Worksheet worksheet, Finding finding) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("sheet", worksheet.name());
        json.put("code", finding.code());
        json.put("about", finding.about().words());
        json.put("level", finding.level().name().toLowerCase(Locale.ROOT));
        json.put("text", finding.text());
        json.put("remedy", finding.remedy());
        if (!finding.sources().isEmpty()) {
            json.put("sources", finding.sources());
        }
        return json;
    }

    private static Map<String, Object> assumed(Assumed assumed) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("what", assumed.what());
        json.put("value", assumed.value());
        json.put("source", assumed.source());
        return json;
    }

    private static Map<String, Object> open(Open open) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("what", open.what());
        json.put("blocks", open.blocks());
        json.put("find_out", open.findOut());
        return json;
    }
}
