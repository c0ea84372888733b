#include "own_item_view_model.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace lidlark::mobile {

namespace {

/// Names in what is held; nobody but this file reads them.
constexpr QLatin1String shapeName("shape");
constexpr QLatin1String sizesName("mm");
constexpr QLatin1String partName("part");
constexpr QLatin1String cupName("cup");
constexpr QLatin1String thereName("there");
constexpr QLatin1String numbersName("numbers");

QJsonArray jsonOf(const OwnSolids &solids)
{
    QJsonArray all;
    for (const TypedSolid &solid : solids.solids())
        all.append(QJsonObject{{shapeName, solid.shape},
                               {sizesName, QJsonArray::fromStringList(solid.mm)},
                               {partName, solid.part},
                               {cupName, solid.cup}});
    return all;
}

QStringList textsIn(const QJsonValue &value)
{
    QStringList texts;
    for (const QJsonValue &text : value.toArray())
        texts.append(text.toString());
    return texts;
}

void showIn(OwnSolids &solids, const QJsonValue &value, int least)
{
    std::vector<TypedSolid> all;
    for (const QJsonValue &one : value.toArray()) {
        TypedSolid solid;
        const int shape = one[shapeName].toInt(-1);
        solid.shape = shape < solids.shapes().size() ? shape : -1;
        const QStringList sizes = textsIn(one[sizesName]);
        for (qsizetype i = 0; i < solid.mm.size(); ++i)
            solid.mm[i] = sizes.value(i);
        solid.part = one[partName].toString();
        solid.cup = one[cupName].toBool();
        if (static_cast<int>(all.size()) < solids.most())
            all.push_back(solid);
    }
    all.resize(std::max(all.size(), static_cast<std::size_t>(least)));
    solids.show(std::move(all));
}

QJsonObject jsonOf(const OwnNumbers &numbers)
{
    return {{thereName, numbers.isThere()},
            {numbersName, QJsonArray::fromStringList(numbers.typed())}};
}

void showIn(OwnNumbers &numbers, const QJsonValue &value)
{
    numbers.show(value[thereName].toBool(), textsIn(value[numbersName]));
}

} // namespace

bool OwnItemViewModel::hasUnreadSizes() const
{
    return m_whole.isUnread() || m_worn.isUnread() || m_comesOff.isUnread() || m_cord.isUnread() ||
           m_hollow.isUnread() || m_film.isUnread();
}

bool OwnItemViewModel::isUnread() const
{
    return hasUnreadSizes() || m_keeping.isUnread() || (!isLent() && m_use.isUnread());
}

QString OwnItemViewModel::typed() const
{
    if (!isUnread())
        return {};
    const QJsonObject all{{"whole", jsonOf(m_whole)},   {"worn", jsonOf(m_worn)},
                          {"off", jsonOf(m_comesOff)},  {"cord", jsonOf(m_cord)},
                          {"hollow", jsonOf(m_hollow)}, {"film", jsonOf(m_film)},
                          {"keep", jsonOf(m_keeping)},  {"use", jsonOf(m_use)}};
    return QString::fromUtf8(QJsonDocument(all).toJson(QJsonDocument::Compact));
}

void OwnItemViewModel::showTyped(const QString &typed)
{
    const QJsonObject all = QJsonDocument::fromJson(typed.toUtf8()).object();
    if (all.isEmpty())
        return; // the file has all of it
    showIn(m_whole, all["whole"], 1);
    showIn(m_worn, all["worn"], 0);
    showIn(m_comesOff, all["off"], 0);
    showIn(m_cord, all["cord"]);
    showIn(m_hollow, all["hollow"]);
    showIn(m_film, all["film"]);
    showIn(m_keeping, all["keep"]);
    showIn(m_use, all["use"]);
}

} // namespace lidlark::mobile
