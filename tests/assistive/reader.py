"""A screen reader without a voice: it knows the app by roles and names alone, and never by place."""

import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, GLib  # noqa: E402  (the version comes first)

LIMIT_S = 30.0  # generous: it is only reached when something is missing
LOOK_AGAIN_S = 0.05

PRESSED = ("Press", "Toggle")


class Missing(Exception):
    """What must be there was not, within the limit."""


class Reader:
    """Hears one app."""

    def __init__(self, app_name):
        self._news = []
        # An alert that appears is read out at once, wherever the reader is on the page.
        self._listener = Atspi.EventListener.new(self._take_news)
        self._listener.register("object:state-changed:showing")
        self._app = self._until(lambda: self._find_app(app_name), f"no app called {app_name}")
        self._app.set_cache_mask(Atspi.Cache.NONE)

    def _take_news(self, event):
        try:
            if event.detail1 and event.source.get_role() == Atspi.Role.ALERT:
                self._news.append(event.source.get_name())
        except GLib.Error:
            pass  # it went away while it was asked

    def is_told(self, start):
        """Waits until an alert that begins so has been read out."""
        self._until(
            lambda: any(words.startswith(start) for words in self._news),
            lambda: f"nobody was told \"{start}\", only {self._news}",
        )

    @staticmethod
    def _find_app(name):
        desktop = Atspi.get_desktop(0)
        desktop.clear_cache()
        for index in range(desktop.get_child_count()):
            app = desktop.get_child_at_index(index)
            if app is not None and app.get_name().lower() == name:
                return app
        return None

    @staticmethod
    def _until(look, problem):
        """What `look` finds, as soon as it finds something."""
        end = time.monotonic() + LIMIT_S
        while True:
            try:
                found = look()
            except GLib.Error:
                found = None  # it went away while it was looked at
            if found:
                return found
            if time.monotonic() > end:
                raise Missing(problem() if callable(problem) else problem)
            while GLib.MainContext.default().iteration(False):
                pass  # what has been told meanwhile
            time.sleep(LOOK_AGAIN_S)

    def _nodes(self, hidden_too=False):
        def walk(node):
            if node is None:
                return
            states = node.get_state_set()
            shows = node is self._app or states.contains(Atspi.StateType.SHOWING)
            if shows or hidden_too:
                yield node, states
            # A page scrolls under its window: what holds something that shows may itself not show.
            for index in range(node.get_child_count()):
                yield from walk(node.get_child_at_index(index))

        yield from walk(self._app)

    def page(self):
        """All that is said of the page, from its first word to its last: (role, name, states)."""
        lines = []
        for node, states in self._nodes():
            role, name = node.get_role_name(), node.get_name()
            if role in ("application", "window", "frame", "filler", "panel") and not name:
                continue
            marks = [
                word
                for word, state in (
                    ("on", Atspi.StateType.CHECKED),
                    ("chosen", Atspi.StateType.SELECTED),
                    ("focus", Atspi.StateType.FOCUSED),
                )
                if states.contains(state)
            ]
            lines.append((role, name, marks))
        return lines

    def aloud(self):
        return [
            f"{role}: {name}" + (f" [{', '.join(marks)}]" if marks else "")
            for role, name, marks in self.page()
        ]

    def _starting(self, start, pressable):
        for node, states in self._nodes():
            if not node.get_name().startswith(start):
                continue
            if not pressable:
                return node
            if states.contains(Atspi.StateType.ENABLED) and self._action_of(node) is not None:
                return node
        self._go_to(start)
        return None

    def _go_to(self, start):
        """Below the fold nothing shows; what gets the focus there is scrolled into view."""
        for node, states in self._nodes(hidden_too=True):
            if (node.get_name().startswith(start)
                    and states.contains(Atspi.StateType.FOCUSABLE)
                    and not states.contains(Atspi.StateType.SHOWING)):
                place = node.get_component_iface()
                if place is not None:
                    place.grab_focus()
                if node.get_state_set().contains(Atspi.StateType.SHOWING):
                    return

    @staticmethod
    def _action_of(node):
        action = node.get_action_iface()
        if action is None:
            return None
        names = [action.get_action_name(i) for i in range(action.get_n_actions())]
        for name in reversed(PRESSED):  # a check box is toggled
            if name in names:
                return action, names.index(name)
        return None

    def _not_there(self, start):
        return lambda: f"nothing begins with \"{start}\". There is:\n  " + "\n  ".join(self.aloud())

    def hear(self, start):
        """Waits until something on the page begins so. Returns all of its name."""
        node = self._until(lambda: self._starting(start, False), self._not_there(start))
        return node.get_name()

    def press(self, start):
        """Presses the control whose name begins so, as soon as there is one."""
        node = self._until(lambda: self._starting(start, True), self._not_there(start))
        name = node.get_name()
        action, index = self._action_of(node)
        action.do_action(index)
        return name

    def count(self, start):
        return sum(1 for _, name, _ in self.page() if name.startswith(start))

    def is_marked(self, start, mark):
        """Waits until something that shows begins so and is marked: nobody scrolls to it."""
        self._until(
            lambda: any(n.startswith(start) and mark in marks for _, n, marks in self.page()),
            lambda: f"\"{start}\" is not {mark}. There is:\n  " + "\n  ".join(self.aloud()),
        )

    def write(self, start, words):
        """Puts words into the field whose name begins so."""
        node = self._until(lambda: self._starting(start, False), self._not_there(start))
        node.get_editable_text_iface().insert_text(0, words, len(words.encode()))

    def focus_is_on(self, start):
        self._until(
            lambda: any(n.startswith(start) and "focus" in m for _, n, m in self.page()),
            lambda: f"the focus is not on \"{start}\". There is:\n  " + "\n  ".join(self.aloud()),
        )
