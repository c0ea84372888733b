#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

#include <vector>

namespace lidlark::mobile {

/// Short notes to oneself, newest first: on this person's own phones, until one is chosen for the
/// therapist.
class OwnNotesViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    /// Why the last tap changed nothing; empty: it did.
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)
    /// What a note may say with one tap.
    Q_PROPERTY(QList<QString> phrases READ phrases CONSTANT FINAL)
    Q_PROPERTY(int longest READ longest CONSTANT FINAL)

public:
    enum Role { WordsRole = Qt::UserRole, WhenRole, SentRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] static QStringList phrases();
    [[nodiscard]] static int longest();

    Q_INVOKABLE bool keep(const QString &words);
    Q_INVOKABLE bool keepPhrase(int phrase);
    Q_INVOKABLE bool remove(int row);
    /// One note may go to the therapist, or stays here after all.
    Q_INVOKABLE bool chooseToSend(int row, bool send);

signals:
    void loaded();

private:
    void load();
    bool report(const Outcome &outcome);
    [[nodiscard]] const play::OwnNote *at(int row) const;

    Household *m_household = nullptr;
    std::vector<play::OwnNote> m_notes;
    QString m_problem;
};

} // namespace lidlark::mobile
