"""A whole evening with Fin, by ear: kite, offers, play, putting back, box, settings.

    an_evening.py APP CLI URDU_TRANSLATION [--aloud]

Nothing is found by its place: what has no name, no role or no action cannot be used here.
"""

import json
import os
import subprocess
import sys
import tempfile
import xml.etree.ElementTree

from reader import Missing, Reader

MONDAY_EVENING = "2027-01-11T18:25:00Z"
DEMO_STORE = "fin-ruth.lidlark"


class Evening:
    """The steps of the evening, in their order."""

    def __init__(self, app, cli, folder, aloud):
        self._app, self._cli, self._aloud = app, cli, aloud
        subprocess.run([cli, "demo", folder], check=True, stdout=subprocess.DEVNULL)
        self._store = os.path.join(folder, DEMO_STORE)
        self._process = None
        self._reader = None

    def start(self, *options):
        command = [self._app, "--store", self._store, "--clock", MONDAY_EVENING, *options]
        self._process = subprocess.Popen(command)
        self._reader = Reader("lidlark")

    def end(self):
        if self._process is not None:
            self._process.terminate()
            self._process.wait()

    def page(self, title):
        if self._aloud:
            print(f"--- {title}")
            print("\n".join(self._reader.aloud()), flush=True)

    def crayons(self):
        """How many crayons the store holds, read beside the app."""
        told = subprocess.run(
            [self._cli, "box", "--store", self._store, "--clock", MONDAY_EVENING, "--json"],
            check=True, capture_output=True, text=True)
        item = next(item for item in json.loads(told.stdout)["items"]
                    if item["id"] == "crayons")
        return item["low"]

    def show_the_kite(self):
        hear, press = self._reader.hear, self._reader.press
        hear("Play with Fin")
        self._reader.focus_is_on("Play with Fin")
        self.page("Today")
        press("Kite: not asked")
        hear("What is your kite doing?")
        self._reader.focus_is_on("What is your kite doing?")
        self.page("Kite")
        press("Flying steady")
        self._reader.is_told("Thank you for showing me.")
        self._reader.is_marked("Flying steady", "chosen")
        press("adult: hold")
        hear("Play with Fin")

    def hear_three_offers(self):
        self._reader.hear("Flying steady")
        offers = [name for role, name, _ in self._reader.page()
                  if role in ("push button", "button") and "Minutes: " in name]
        if len(offers) != 3:
            raise Missing(f"three offers, not {len(offers)}: {offers}")
        self.page("Today, after the kite")

    def play(self):
        hear, press = self._reader.hear, self._reader.press
        press("Everything")
        hear("Everything for Fin")
        press("One-Line Coast")
        self._reader.focus_is_on("One-Line Coast")
        said = hear("Step 1 of ")
        self.page("Play")
        press("Easier")
        self._reader.is_marked("Easier", "on")
        for step in range(2, int(said.split()[-1]) + 1):
            press("Next step")
            self._reader.is_told(f"Step {step} of ")
        self.page("Last step")
        press("Put back")

    def put_back_with_one_crayon_broken(self):
        hear, press = self._reader.hear, self._reader.press
        hear("Everything home")
        self.page("Putting back")
        press("Something's different")
        hear("Something's different")
        press("Short crayons: broken")
        self._reader.is_marked("Short crayons: broken", "on")
        self.page("What is different")
        press("The rest is back")
        hear("Put back")
        self.page("Noticed")
        press("Found own way")
        press("Done")
        hear("Play with Fin")

    def read_the_box(self, before):
        self._reader.press("Box")
        self._reader.hear(f"short crayons, {before - 1}")
        self.page("Box")
        if self.crayons() != before - 1:
            raise Missing(f"the store holds {self.crayons()} crayons, not {before - 1}")

    def read_twice_as_large(self):
        hear, press = self._reader.hear, self._reader.press
        press("Crew")
        press("Settings")
        hear("Text size")
        self.page("Settings")
        press("Twice as large")
        self._reader.is_marked("Twice as large", "on")
        press("Back to the crew")
        press("Today")
        hear("Play with Fin")


    def read_in_urdu(self, translations):
        """The four places, as the translation says them."""
        if not os.path.exists(translations):
            print("Urdu: this build has none.")
            return
        self.end()
        self.start("--language", "ur")
        tree = xml.etree.ElementTree.parse(translations)
        said = {message.findtext("source"): message.findtext("translation")
                for message in tree.iter("message")}
        for place in ("Today", "Box", "Notebook", "Crew"):
            self._reader.hear(said[place])
        self.page("Today in Urdu")


def main():
    app, cli, translations = sys.argv[1:4]
    with tempfile.TemporaryDirectory(prefix="lidlark-evening-") as folder:
        evening = Evening(app, cli, folder, "--aloud" in sys.argv)
        before = evening.crayons()
        try:
            evening.start()
            evening.show_the_kite()
            evening.hear_three_offers()
            evening.play()
            evening.put_back_with_one_crayon_broken()
            evening.read_the_box(before)
            evening.read_twice_as_large()
            evening.read_in_urdu(translations)
        except Missing as missing:
            print(f"The evening stopped: {missing}")
            return 1
        finally:
            evening.end()
    print("An evening by ear: walked to its end.")
    return 0


if __name__ == "__main__":
    sys.exit(main())
