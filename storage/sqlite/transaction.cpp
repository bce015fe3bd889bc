#include "storage/sqlite/transaction.h"

#include <sqlite3.h>

namespace topwire {

Transaction::Transaction(Connection& connection) : connection_(&connection) {
  connection.execute("BEGIN IMMEDIATE");
}

Transaction::~Transaction() {
  // After a full disk SQLite may have rolled back by itself; nothing is left to end then.
  if (connection_->inTransaction())
    sqlite3_exec(connection_->handle(), "ROLLBACK", nullptr, nullptr, nullptr);
}

void Transaction::commit() {
  connection_->execute("COMMIT");
}

}  // namespace topwire
