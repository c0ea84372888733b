#pragma once

#include "core/base/enum_names.h"
#include "core/journal/event.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>

namespace lidlark::play {

/// The longest note, in characters as a person counts them [P].
inline constexpr std::size_t longestNote = 280;

/// What a note may say with one tap (job.md G9). Things to remember, never a verdict on a child.
enum class NotePhrase { AskAtVisit, OtherTime, QuieterPlace, SomebodyJoins, LooksWorn };
inline constexpr std::size_t notePhraseCount = 5;
inline constexpr EnumNames<NotePhrase, notePhraseCount> notePhraseNames{
    {"ask-at-visit", "other-time", "quieter-place", "somebody-joins", "looks-worn"}};

/// A short note to oneself: in the author's own lane, on the author's own devices.
struct OwnNote {
    std::string id;
    ChildId child;
    std::string words;                ///< As typed; empty where a phrase says it.
    std::optional<NotePhrase> phrase; ///< Instead of words.
    std::string author;
    DayPart when;
    Instant at;
    bool sent = false;          ///< The author has chosen that the therapist may have it.
    std::optional<Day> removed; ///< Taken off on that day; its words go when the day is over.
    bool operator==(const OwnNote &) const = default;
};

std::string fieldsOf(const OwnNote &note);
std::string fieldsOfNoteRemoval(const std::string &id, const ChildId &child);
/// That one note may go to the therapist: chosen for each note by itself, never for all.
std::string fieldsOfNoteSent(const std::string &id, const ChildId &child);

/// What an own note is about within its lane.
std::string subjectOfNote(const std::string &id);

/// @param events those of one note's subject, any order. @returns nothing when malformed or when
/// only its removal is here.
std::optional<OwnNote> foldOwnNote(std::span<const journal::Event> events);

} // namespace lidlark::play
