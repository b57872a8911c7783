package secondbolt.worksheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SentenceTest {
    @Test
    void beginsWithACapitalWhereTheScriptHasThem() {
        assertEquals("Ärmel", Sentence.capital("ärmel"));
        assertEquals("2 of main", Sentence.capital("2 of main"));
        assertEquals("袖", Sentence.capital("袖"));
        assertEquals("𐐀𐐨", Sentence.capital("𐐨𐐨"));
    }
}
