#include "emergency_view_model.h"

#include "core/child/phone_number.h"
#include "core/wording/emergency_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

using wording::Trouble;

QString urlOf(const std::string &number)
{
    return number.empty() ? QString() : QStringLiteral("tel:") + fromCore(child::dialled(number));
}

} // namespace

void EmergencyViewModel::setHousehold(Household *household)
{
    m_household = household;
    // A sheet that cannot be read must not keep the words from being read.
    const auto family = m_household->family();
    if (family && family->sheet) {
        m_emergencyNumber = family->sheet->emergencyNumber;
        m_poisonLine = family->sheet->poisonLine;
    }
    emit loaded();
}

int EmergencyViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(wording::troubleNames.names.size());
}

QVariant EmergencyViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const auto trouble = static_cast<Trouble>(index.row());
    switch (role) {
    case NameRole:
        return fromCore(wording::troubleNames.of(trouble));
    case TitleRole:
        return safetyText(wording::troubleName(trouble));
    case LinesRole: {
        QStringList lines;
        for (const wording::Sentence &sentence : wording::troubleWords(trouble))
            lines.append(safetyText(sentence));
        return lines;
    }
    default:
        return {};
    }
}

QHash<int, QByteArray> EmergencyViewModel::roleNames() const
{
    return {{NameRole, "name"}, {TitleRole, "title"}, {LinesRole, "lines"}};
}

QString EmergencyViewModel::firstLine() const
{
    return safetyText(wording::emergencyFirstLine(m_emergencyNumber));
}

QString EmergencyViewModel::callText() const
{
    return m_emergencyNumber.empty() ? QString()
                                     : translated(wording::callNumber(m_emergencyNumber));
}

QString EmergencyViewModel::poisonText() const
{
    return m_poisonLine.empty() ? QString() : translated(wording::callPoisonLine(m_poisonLine));
}

QString EmergencyViewModel::callUrl() const
{
    return urlOf(m_emergencyNumber);
}

QString EmergencyViewModel::poisonUrl() const
{
    return urlOf(m_poisonLine);
}

} // namespace lidlark::mobile
