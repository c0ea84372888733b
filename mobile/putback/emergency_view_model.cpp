#include "emergency_view_model.h"

#include <QDesktopServices>
#include <QUrl>

#include "core/wording/emergency_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <array>

namespace lidlark::mobile {

namespace {

using wording::Emergency;

constexpr std::array all{Emergency::Airway, Emergency::Swallowed, Emergency::Reaction,
                         Emergency::Eye};

} // namespace

void EmergencyViewModel::setHousehold(Household *household)
{
    m_household = household;
    const auto family = household->family();
    if (family && family->sheet) {
        m_number = fromCore(family->sheet->emergencyNumber);
        m_poisonLine = fromCore(family->sheet->poisonLine);
    }
    emit changed();
}

QString EmergencyViewModel::lead() const
{
    return translated(wording::emergencyLead(toCore(m_number)));
}

QString EmergencyViewModel::words() const
{
    QStringList lines;
    const Emergency chosen = all.at(static_cast<std::size_t>(m_chosen));
    for (const wording::Sentence &line : wording::emergencyLines(chosen, toCore(m_poisonLine)))
        lines.append(translated(line));
    return lines.join(u' ');
}

QStringList EmergencyViewModel::others() const
{
    QStringList names;
    for (const Emergency emergency : all) {
        if (emergency != all.at(static_cast<std::size_t>(m_chosen)))
            names.append(translated(wording::emergencyName(emergency)));
    }
    return names;
}

void EmergencyViewModel::choose(int index)
{
    if (index < 0 || index + 1 >= static_cast<int>(all.size()))
        return;
    m_chosen = index < m_chosen ? index : index + 1;
    emit changed();
}

void EmergencyViewModel::call() const
{
    QString digits = m_number;
    digits.remove(u' ').remove(u'-');
    QDesktopServices::openUrl(QUrl(QStringLiteral("tel:") + digits));
}

} // namespace lidlark::mobile
