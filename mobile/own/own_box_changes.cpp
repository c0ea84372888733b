#include "own_boxes_view_model.h"

#include "core/wording/reason_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

/// Activities that go for the same reasons.
struct Together {
    std::vector<ActivityId> activities;
    QString why;
};

} // namespace

QString OwnBoxesViewModel::namesOf(const std::vector<ActivityId> &activities) const
{
    QStringList names;
    for (const ActivityId &id : activities) {
        // A page opened for one child may not know what another box alone has.
        const auto *known = m_household->catalogue().activity(id);
        if (known == nullptr)
            known = m_household->catalogueIn({}).activity(id);
        names.append(known != nullptr ? fromCore(known->name) : fromCore(id.value));
    }
    return names.join(QStringLiteral(", "));
}

QString OwnBoxesViewModel::hiddenWords(const usecase::BoxRecheck &gate) const
{
    std::vector<Together> groups;
    for (const usecase::BoxRecheck::Hidden &hidden : gate.hidden) {
        const bool gone = hidden.reasons.empty();
        QStringList why;
        for (const safety::Reason &reason : gone ? hidden.withEveryTag : hidden.reasons)
            why.append(translated(wording::sentenceFor(reason, m_household->catalogue())));
        if (gone)
            why.append(tr("What it says does not warn of this yet."));
        const QString reasons = why.join(u'\n');
        const auto same = std::ranges::find(groups, reasons, &Together::why);
        if (same == groups.end())
            groups.push_back({{hidden.activity}, reasons});
        else
            same->activities.push_back(hidden.activity);
    }
    QStringList lines;
    for (const Together &group : groups)
        lines.append(tr("No longer offered: %1.").arg(namesOf(group.activities)) + u'\n' +
                     group.why);
    return lines.join(QLatin1Char('\n'));
}

QString OwnBoxesViewModel::changesOf(const usecase::OwnReach &reach) const
{
    QStringList lines;
    if (reach.avoided)
        lines.append(tr("It has to come out of the box: somebody at home must avoid it."));
    if (!reach.gate.hidden.empty())
        lines.append(hiddenWords(reach.gate));
    if (!reach.gate.changed.empty())
        lines.append(tr("Still offered, with more to mind: %1.").arg(namesOf(reach.gate.changed)));
    if (!reach.gate.opened.empty())
        lines.append(tr("Offered from now on: %1.").arg(namesOf(reach.gate.opened)));
    if (!lines.isEmpty() && reach.pieces > 0)
        lines.append(numerals(tr("In the box: %n of them.", nullptr, reach.pieces)));
    return lines.join(QLatin1Char('\n'));
}

Result<std::vector<OwnBoxesViewModel::Row>> OwnBoxesViewModel::thingRows()
{
    const auto draft = ownItemWriting(*m_household, m_entry);
    if (!draft)
        return draft.error();
    const auto all = reachOfItem(*m_household, *draft);
    if (!all)
        return all.error();
    const std::string text = yamlOf(draft->kind, draft->holds);
    std::vector<Row> rows;
    for (const usecase::OwnReach &reach : *all) {
        Row row{fromCore(reach.gate.child), {}, changesOf(reach), false};
        row.inBox = reach.inBox && !reach.inBox->withdrawn;
        const bool asWritten =
            row.inBox && !reach.inBox->unsettled && reach.inBox->known.text == text;
        if (asWritten)
            row.note = tr("It counts in this box.");
        else if (row.inBox && reach.inBox->unsettled)
            row.note = tr("Said in two ways, and the more careful counts. Send this one, and it "
                          "is settled.");
        else if (row.inBox)
            row.note = tr("In this box it counts as it was sent before.");
        if (!row.changes.isEmpty())
            row.note += (row.note.isEmpty() ? QString() : QStringLiteral("\n")) + row.changes;
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace lidlark::mobile
