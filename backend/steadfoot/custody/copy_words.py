"""What the parts of a copied record are called, in English and German."""

from collections.abc import Mapping
from typing import Final, Literal

Language = Literal["en", "de"]

TITLES: Final[Mapping[str, tuple[str, str]]] = {
    "client": ("About the person", "Zur Person"),
    "invitation": ("Invitations to pair a phone", "Einladungen, ein Telefon zu koppeln"),
    "device": ("Phones", "Telefone"),
    "pairing": ("Pairings of phones", "Kopplungen von Telefonen"),
    "change": ("What was sent to the phone", "Was an das Telefon ging"),
    "screening": ("Health questions before training", "Gesundheitsfragen vor dem Training"),
    "clearance": ("Clearances to train", "Freigaben zum Training"),
    "test_result": ("Test results", "Testergebnisse"),
    "functional_scale": ("Activities that are hard", "Tätigkeiten, die schwerfallen"),
    "program_draft": ("Draft of a program", "Entwurf eines Programms"),
    "program_version": ("Programs", "Programme"),
    "event": ("Check-ins, as the phone sent them", "Einträge, wie das Telefon sie sandte"),
    "receipt": ("Numbers of check-ins received", "Nummern empfangener Einträge"),
    "due": ("Check-ins received and not yet worked out", "Empfangene, noch nicht ausgewertete Einträge"),
    "refused_event": ("Entries kept aside", "Beiseitegelegte Einträge"),
    "session_rollup": ("Sessions, as read from check-ins", "Einheiten, aus Einträgen gelesen"),
    "pain_entry": ("Pain, as read from check-ins", "Schmerz, aus Einträgen gelesen"),
    "trip": ("The trip", "Die Tour"),
    "trip_leg": ("Legs of the trip", "Etappen der Tour"),
    "finding": ("What the rules pointed out", "Worauf die Regeln hinwiesen"),
    "client_sheet": ("Summary for the practice's list", "Zusammenfassung für die Liste der Praxis"),
    "flag_decision": ("Answers to what was pointed out", "Antworten auf Hinweise"),
    "progression_decision": ("Decisions on progress", "Entscheidungen zum Fortschritt"),
    "message": ("Messages from the practice", "Nachrichten der Praxis"),
    "readiness_note": ("Signed notes on readiness", "Unterschriebene Notizen zur Tourbereitschaft"),
    "erasure": ("Erasure asked for", "Verlangte Löschung"),
    "audit_entry": ("Who saw and did what", "Wer was sah und tat"),
}
_SENTENCES: Final = {
    "title": ("Copy of the record of {name}", "Kopie der Akte von {name}"),
    "made": ("Made at {at} by {practice}.", "Erstellt am {at} von {practice}."),
    "machine": (
        "record.json beside this page has the same for programs: one object, a list of rows for each table.",
        "record.json neben dieser Seite enthält dasselbe für Programme: ein Objekt, je Tabelle eine Liste von Zeilen.",
    ),
    "times": (
        "Times are in UTC unless they carry another offset. Lengths are in the unit that a column's name ends with.",
        "Zeiten sind in UTC, wenn sie keine andere Abweichung tragen. Längen haben die Einheit im Spaltennamen.",
    ),
    "withheld": ("Left out, with the reason:", "Weggelassen, mit Grund:"),
    "people": ("People of the practice named by id", "Mit Kennung genannte Personen der Praxis"),
    "none": ("Nothing.", "Nichts."),
    "health": (
        "This is a record of health. Keep it where only those can open it who should.",
        "Dies sind Gesundheitsdaten. Bewahren Sie sie so auf, dass nur Befugte sie öffnen können.",
    ),
}


def said(key: str, language: Language) -> str:
    """Answer a sentence in a language."""
    return str(_SENTENCES[key][language == "de"])


def title(table: str, language: Language) -> str:
    """Answer what a table is called in a language."""
    return TITLES[table][language == "de"]
