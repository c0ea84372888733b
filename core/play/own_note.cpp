#include "core/play/own_note.h"

#include "core/journal/fields.h"

#include <algorithm>
#include <tuple>

namespace lidlark::play {

namespace {

using journal::Event;
using journal::Fields;
using journal::Kind;

/// A note is written once; of two with one id the earlier is the note.
bool earlier(const Event &a, const Event &b)
{
    return std::tie(a.instant, a.device, a.counter, a.fields) <
           std::tie(b.instant, b.device, b.counter, b.fields);
}

std::optional<OwnNote> readNote(const Event &event)
{
    const Fields fields(event.fields);
    const auto id = fields.text("id");
    const auto child = fields.text("child");
    if (event.kind != Kind::Note || !id || !child)
        return std::nullopt;
    OwnNote note;
    note.id = *id;
    note.child = {*child};
    note.words = fields.text("words").value_or("");
    note.phrase = notePhraseNames.parse(fields.text("phrase").value_or(""));
    note.author = event.author;
    note.when = event.when;
    note.at = event.instant;
    if (note.words.empty() && !note.phrase)
        return std::nullopt;
    return note;
}

} // namespace

std::string fieldsOf(const OwnNote &note)
{
    nlohmann::json fields{{"id", note.id}, {"child", note.child.value}};
    if (note.phrase)
        fields["phrase"] = notePhraseNames.of(*note.phrase);
    else
        fields["words"] = note.words;
    return fields.dump();
}

std::string fieldsOfNoteRemoval(const std::string &id, const ChildId &child)
{
    return nlohmann::json{{"id", id}, {"child", child.value}, {"removed", true}}.dump();
}

std::string fieldsOfNoteSent(const std::string &id, const ChildId &child)
{
    return nlohmann::json{{"id", id}, {"child", child.value}}.dump();
}

std::string subjectOfNote(const std::string &id)
{
    return "note:" + id;
}

std::optional<OwnNote> foldOwnNote(std::span<const Event> events)
{
    const Event *written = nullptr;
    for (const Event &event : events) {
        if (readNote(event) && (written == nullptr || earlier(event, *written)))
            written = &event;
    }
    if (written == nullptr)
        return std::nullopt;
    std::optional<OwnNote> note = readNote(*written);
    for (const Event &event : events) {
        if (event.kind == Kind::NoteSent)
            note->sent = true;
        else if (event.kind == Kind::Note && Fields(event.fields).isTrue("removed"))
            note->removed = std::max(note->removed.value_or(event.when.day), event.when.day);
    }
    return note;
}

} // namespace lidlark::play
