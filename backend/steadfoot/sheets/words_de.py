"""The sheet's own words in German, with the keys of the English ones. It says "du" as the phone does."""

WORDS = {
    "for_person": "Für {name}",
    "goal": "Ziel: {name}, {day}",
    "version": "Fassung {number}, {day}. Gedruckt {printed}.",
    "class_printed": "Gedruckt {printed}.",
    "rounds_one": "1 Runde",
    "rounds": "{n} Runden",
    "minutes": "etwa {n} Minuten",
    "effort": "Anstrengung {n} von 10",
    "distance": "{n} km",
    "ascent": "{n} m hinauf",
    "descent": "{n} m hinunter",
    "pack": "Rucksack {n} kg",
    "each": "jede Seite nacheinander",
    "both": "beide Seiten zusammen",
    "reps_one": "1 Wiederholung",
    "reps": "{n} Wiederholungen",
    "range": "{low} bis {high}",
    "hold_one": "1 Sekunde halten",
    "hold": "{n} Sekunden halten",
    "load": "mit {n} kg",
    "tempo": "abwärts {n}\u00a0s",
    "rest": "danach {n}\u00a0s Pause",
    "bring": "Leg bereit: {kit}.",
    "hint": "Mach die Bewegungen von der ersten bis zur letzten. Das ist eine Runde. "
    "Hak ein Kästchen ab, wenn alle Runden einer Bewegung getan sind.",
    "hint_class": "Mach jede Bewegung langsam. Hör auf, bevor sie unsauber wird.",
    "hint_plain": "Hak jedes Mal ein Kästchen ab.",
    "weeks_past": "Für diese Einheit sind keine Tage mehr geplant. Frag nach einem neuen Blatt.",
    "weeks_more": "Danach folgen weitere Wochen. Frag dann nach einem neuen Blatt.",
    "how": "So geht es",
    "cues": "Denk daran",
    "cautions": "Gib acht",
    "instead": "Oder stattdessen",
    "note": "Für dich",
    "care_title": "Gib auf dich acht",
    "urgent_title": "Aufhören und Hilfe holen",
    "practice_says": "{practice} sagt: {text}",
    "pain": "Lass eine Bewegung für heute, wenn der Schmerz {stop} von 10 oder mehr ist oder "
    "mit jeder Wiederholung wächst.",
    "ask": "Stechender Schmerz, Taubheit oder ein Gelenk, das wegknickt: Lass die Bewegung weg und frag zuerst {who}.",
    "steady": "Hab etwas Festes in Reichweite, wenn du balancierst. Geh zum Aufwärmen fünf Minuten.",
    "licensed": "Dieses Blatt ersetzt nicht den Rat deiner Praxis, deiner Ärztin oder deines Arztes.",
    "public": "Diese Bewegungen sind Beispiele für eine Gruppe, nicht für dich allein gemacht. "
    "Bist du schwanger, frisch operiert, krank oder hast du Schmerzen? "
    "Frag eine Fachperson für Physiotherapie oder Medizin, bevor du beginnst.",
    "urgent": "Schmerz oder Druck in der Brust, Ohnmacht, Atemnot oder plötzliche Schwäche auf einer Seite: "
    "Hör auf und ruf jetzt den örtlichen Notruf an. Warte nicht auf eine Antwort von jemand anderem. "
    "Fahr nicht selbst.",
    "qr_app": "Dasselbe Programm auf deinem Handy",
    "qr_pair": "Handy verbinden: gilt einmal, bis {until}. Gib es nicht weiter. Deine Praxis bestätigt das Handy.",
    "qr_alt": "QR-Code",
    "strip_alt": "Zeichnung von {name}",
    "box": "noch offen",
    "page": "Seite {n} von {all}",
    "and": "und",
    "kit_chair": "Stuhl",
    "kit_step": "Stufe",
    "kit_stairs": "Treppe",
    "kit_wall": "Wand",
    "kit_mat": "Matte",
    "kit_band": "Band",
    "kit_dumbbell": "Hantel",
    "kit_pack": "Rucksack",
    "kit_towel": "Handtuch",
    "kit_ball": "Ball",
    "kit_rail": "Geländer",
    "kit_table": "Tisch",
    "kit_pillow": "Kissen",
}
DAYS = ("Montag", "Dienstag", "Mittwoch", "Donnerstag", "Freitag", "Samstag", "Sonntag")
MONTHS = (
    "Januar", "Februar", "März", "April", "Mai", "Juni",
    "Juli", "August", "September", "Oktober", "November", "Dezember",
)  # fmt: skip
DATE = "{weekday}, {day}. {month} {year}"
SHORT_DATE = "{day}. {month}"
DECIMAL_MARK = ","
