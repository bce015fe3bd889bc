#pragma once

#include "storage/sqlite/connection.h"

namespace topwire {

/// Begins here, taking the writing place at once; rolled back by the destructor unless
/// committed. Does not nest.
class Transaction {
public:
  explicit Transaction(Connection& connection);
  ~Transaction();
  Transaction(const Transaction&) = delete;
  Transaction& operator=(const Transaction&) = delete;

  /// On a throw the transaction is still open, and ends in the destructor.
  void commit();

private:
  Connection* connection_;
};

}  // namespace topwire
