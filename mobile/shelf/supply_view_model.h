#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "catalogue_facts.h"
#include "pack_offers.h"

#include "mobile/bridge/shelf_desk.h"

namespace lidlark::mobile {

/// One thing of the shelf: what the catalogue knows of it, and what the clinic keeps while it is
/// written. What is typed stays as it was typed until all of it can be kept.
class SupplyViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// Empty: a thing that nobody has heard of yet.
    Q_PROPERTY(QString item READ item WRITE setItem REQUIRED)
    Q_PROPERTY(bool isNew READ isNew NOTIFY loaded FINAL)
    Q_PROPERTY(QString name READ name NOTIFY loaded FINAL)
    Q_PROPERTY(QString drawing READ drawing NOTIFY loaded FINAL)
    /// The catalogue knows it, and answers what it holds.
    Q_PROPERTY(bool inCatalogue READ inCatalogue NOTIFY loaded FINAL)
    /// What it is in the catalogue: the scissors of "Scissors, left"; empty: the catalogue does
    /// not know it.
    Q_PROPERTY(QString kind READ kind NOTIFY loaded FINAL)
    /// A thing of the therapist's own.
    Q_PROPERTY(bool isOwn READ isOwn NOTIFY loaded FINAL)
    /// "Small parts, latex".
    Q_PROPERTY(QString cautions READ cautions NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> factLabels READ factLabels NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> factWords READ factWords NOTIFY loaded FINAL)
    Q_PROPERTY(QString currency READ currency NOTIFY loaded FINAL)

    Q_PROPERTY(lidlark::mobile::PackOffers *offers READ offers CONSTANT FINAL)
    Q_PROPERTY(QString ownName READ ownName WRITE setOwnName NOTIFY edited FINAL)
    Q_PROPERTY(QString nameProblem READ nameProblem NOTIFY edited FINAL)
    Q_PROPERTY(QString stock READ stock WRITE setStock NOTIFY edited FINAL)
    Q_PROPERTY(QString stockProblem READ stockProblem NOTIFY edited FINAL)
    Q_PROPERTY(QString lot READ lot WRITE setLot NOTIFY edited FINAL)
    Q_PROPERTY(QString note READ note WRITE setNote NOTIFY edited FINAL)
    Q_PROPERTY(bool usedUp READ usedUp WRITE setUsedUp NOTIFY edited FINAL)
    /// What it was looked at to be free of: in words, and whether it was.
    Q_PROPERTY(QList<QString> freeOfWords READ freeOfWords CONSTANT FINAL)
    Q_PROPERTY(QList<bool> freeOf READ freeOf NOTIFY edited FINAL)
    /// Something stands here that is not kept yet.
    Q_PROPERTY(bool changed READ changed NOTIFY edited FINAL)
    /// The lot as it is kept; empty: none is.
    Q_PROPERTY(QString keptLot READ keptLot NOTIFY edited FINAL)
    /// Why nothing was kept, the field named.
    Q_PROPERTY(QString problem READ problem NOTIFY edited FINAL)

public:
    explicit SupplyViewModel(QObject *parent = nullptr);
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString item() const { return m_item; }
    void setItem(const QString &item);

    [[nodiscard]] bool isNew() const { return m_item.isEmpty(); }
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString drawing() const { return shelfDrawing(m_thing); }
    [[nodiscard]] bool inCatalogue() const { return m_thing.kind != nullptr; }
    [[nodiscard]] QString kind() const;
    [[nodiscard]] bool isOwn() const;
    [[nodiscard]] QString cautions() const;
    [[nodiscard]] QStringList factLabels() const;
    [[nodiscard]] QStringList factWords() const;
    [[nodiscard]] QString currency() const;

    [[nodiscard]] PackOffers *offers() { return &m_offers; }
    [[nodiscard]] QString ownName() const { return m_typed.name; }
    void setOwnName(const QString &name);
    [[nodiscard]] QString nameProblem() const { return m_nameProblem; }
    [[nodiscard]] QString stock() const { return m_typed.stock; }
    void setStock(const QString &stock);
    [[nodiscard]] QString stockProblem() const { return m_stockProblem; }
    [[nodiscard]] QString lot() const { return m_typed.lot; }
    void setLot(const QString &lot);
    [[nodiscard]] QString note() const { return m_typed.note; }
    void setNote(const QString &note);
    [[nodiscard]] bool usedUp() const { return m_typed.usedUp; }
    void setUsedUp(bool usedUp);
    [[nodiscard]] static QStringList freeOfWords();
    [[nodiscard]] QList<bool> freeOf() const { return m_typed.freeOf; }
    [[nodiscard]] bool changed() const;
    [[nodiscard]] QString keptLot() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void turnFreeOf(int which);
    /// @returns whether it is kept; else what is wrong stands at its field, and nothing is lost.
    Q_INVOKABLE bool keep();

signals:
    void loaded();
    void edited();

private:
    /// As it stands on the page.
    struct Typed {
        QString name;
        QString stock;
        QString lot;
        QString note;
        bool usedUp = false;
        QList<bool> freeOf;
        QStringList offers;
        bool operator==(const Typed &) const = default;
    };
    void load();
    void change();
    [[nodiscard]] Typed now() const;
    [[nodiscard]] bool looksRight();
    [[nodiscard]] workbench::KeptSupply asTyped(std::vector<workbench::PackOffer> offers) const;

    Household *m_household = nullptr;
    QString m_item;
    ShelfThing m_thing;
    std::vector<CatalogueFact> m_facts;
    std::string m_currency;
    PackOffers m_offers;
    Typed m_typed; ///< Its offers stand in `m_offers`.
    Typed m_kept;
    QString m_nameProblem;
    QString m_stockProblem;
    QString m_problem;
};

} // namespace lidlark::mobile
